package collarwright.cli;

import collarwright.collar.Bench;
import collarwright.collar.HoleContact;
import collarwright.collar.LeanEnvelope;
import collarwright.collar.Rolls;
import collarwright.collar.RoundAperture;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Where;
import collarwright.picture.EnvelopePicture;
import collarwright.picture.SvgPicture;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** The envelope of {@code tilt}: how far the strut leans all the way round, as a picture. */
final class TiltEnvelope {

    /** Each of an oval strut takes a dozen rolls of the general solver. */
    private static final int BEARINGS_OF_AN_OVAL = 24;

    private TiltEnvelope() {}

    static void checkName(Path file) {
        String name = String.valueOf(file.getFileName());
        if (!name.toLowerCase(Locale.ROOT).endsWith(".svg")) {
            throw new JobException(List.of(Finding.stop(
                    Code.COMMAND_LINE,
                    new Where.Part("--envelope"),
                    "a file name that ends in .svg",
                    name,
                    "write --envelope hole.svg")));
        }
    }

    /** Empty if the strut does not pass along the hole's own axis at every roll. */
    static Optional<LeanEnvelope> of(Bench bench) {
        if (bench.hole() instanceof RoundAperture round && bench.strut().isRound()) {
            return Optional.of(LeanEnvelope.round(bench.strut().largest(), round.diameter(), bench.bearing()));
        }
        double[] rolls = bench.strut().isRound() ? new double[] {0} : Rolls.tried();
        List<HoleContact> contacts = DoubleStream.of(rolls)
                .mapToObj(roll -> new HoleContact(bench.hole(), bench.bearing(), bench.strut(), roll))
                .toList();
        return LeanEnvelope.of(contacts, bench.strut().isRound() ? LeanEnvelope.BEARINGS : BEARINGS_OF_AN_OVAL);
    }

    static void write(Path file, EnvelopePicture picture) {
        String svg = SvgPicture.document(picture, "envelope");
        try {
            Files.writeString(file, svg, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
        } catch (FileAlreadyExistsException e) {
            throw refused(
                    file, "a file that is not there yet", "it is there already", "name another file, or move it away");
        } catch (IOException e) {
            throw refused(
                    file,
                    "a file that can be written",
                    String.valueOf(e.getMessage()),
                    "choose a folder you may write to");
        }
    }

    private static JobException refused(Path file, String expected, String found, String hint) {
        return new JobException(
                List.of(Finding.stop(Code.PACK_NOT_WRITTEN, new Where.Path(file.toString()), expected, found, hint)));
    }
}
