package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.plan.Plan;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;

@ResourceLock(Resources.LOCALE)
@ResourceLock(Resources.TIME_ZONE)
class FixedZipTest {

    private static byte[] book(String title) {
        Plan plan = PackJobs.plan(PackJobs.titled(PackJobs.metric(), title));
        return PackBook.print(
                plan,
                List.of(
                        new PackBook.Part("job", PlanTables.job(plan)),
                        new PackBook.Part("holes", PackTables.holes(plan))));
    }

    private static Map<String, String> parts(byte[] book) throws IOException {
        Map<String, String> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(book))) {
            for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
                assertThat(part.getMethod()).isEqualTo(ZipEntry.STORED);
                assertThat(part.getTimeLocal().getYear()).isEqualTo(2000);
                assertThat(part.getExtra()).isNull();
                parts.put(part.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return parts;
    }

    @Test
    void book_underAnotherClockAndLocale_hasTheSameBytes() {
        byte[] here = book("Bees");
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            assertThat(book("Bees")).isEqualTo(here);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void parts_say_noDateAndTheTitleAsItIs() throws IOException {
        Map<String, String> parts = parts(book("Bees & <pears>, Μέλισσα 蜂 \u0001"));
        assertThat(parts).containsKeys("docProps/core.xml", "xl/workbook.xml", "xl/worksheets/sheet2.xml");
        assertThat(parts.get("docProps/core.xml"))
                .contains("<dc:title>Bees &amp; &lt;pears&gt;, Μέλισσα 蜂 </dc:title>");
        parts.forEach((name, text) -> assertThat(text).as(name).doesNotContainPattern("20[0-9]{2}-[0-9]{2}-[0-9]{2}T"));
    }

    @Test
    void sheet_tooLongForSpreadsheets_namesTheOtherFile() throws IOException {
        TableBuilder many = new TableBuilder("n");
        for (int i = 0; i <= PackBook.MOST_ROWS; i++) {
            many.whole(i).endRow();
        }
        Plan plan = PackJobs.plan(PackJobs.metric());
        Map<String, String> parts = parts(PackBook.print(plan, List.of(new PackBook.Part("many", many.table()))));
        assertThat(parts.get("xl/sharedStrings.xml")).contains("50001 rows: see the CSV file");
    }
}
