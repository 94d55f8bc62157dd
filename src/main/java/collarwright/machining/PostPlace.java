package collarwright.machining;

/** Where the tool stands along X and how far the pipe has turned while a program is printed; NaN where no move said so yet. */
final class PostPlace {

    private double x = Double.NaN;
    private double angleDegrees = Double.NaN;

    double x() {
        return x;
    }

    double angleDegrees() {
        return angleDegrees;
    }

    void follow(Move move) {
        if (move instanceof Move.Rapid r) {
            x = r.axis() == Axis.X ? r.to() : x;
            angleDegrees = r.axis() == Axis.A ? r.to() : angleDegrees;
        } else if (move instanceof Move.Line l) {
            x = l.x();
        } else if (move instanceof Move.Arc a) {
            x = a.x();
        } else if (move instanceof Move.Sweep s) {
            x = s.x();
            angleDegrees = s.angleDegrees();
        } else if (move instanceof Move.Cycle c) {
            x = c.x();
        }
    }
}
