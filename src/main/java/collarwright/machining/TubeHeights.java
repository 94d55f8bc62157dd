package collarwright.machining;

/**
 * Z of a tube cutter's tip, on the program's grid.
 *
 * @param pierce while it pierces
 * @param cut while it cuts
 * @param clear where the pipe turns and X moves with nothing cut: above crown, out-of-round, jaws and gap
 */
record TubeHeights(double pierce, double cut, double clear) {

    static TubeHeights of(RotarySettings settings) {
        TubeCutter tube = settings.machine().tube().orElseThrow();
        Grid grid = settings.grid();
        double crown = settings.work().body().outerRadius();
        double clear = Heights.of(settings, tube.cutter()).clear();
        double pierce = grid.snapUp(crown + tube.heights().pierce());
        return new TubeHeights(pierce, grid.snap(crown + tube.heights().cut()), StrictMath.max(clear, pierce));
    }
}
