package collarwright.finding;

/**
 * The kinds of findings, grouped by stage. A name is never used again for another meaning; {@code collarwright explain
 * NAME} tells its cause, an example and its cure.
 */
public enum Code {
    /** The command line is wrong. */
    COMMAND_LINE(Outcome.COMMAND_LINE),

    /** The job file is not there. */
    JOB_FILE_MISSING(Outcome.JOB),
    /** The job file cannot be read, or is not UTF-8 text. */
    JOB_FILE_UNREADABLE(Outcome.JOB),
    /** The text is not TOML. */
    JOB_SYNTAX(Outcome.JOB),
    /** A key that the job file does not have. */
    JOB_UNKNOWN_KEY(Outcome.JOB),
    /** A key that has to be there. */
    JOB_KEY_MISSING(Outcome.JOB),
    /** A value of the wrong kind, such as text where a number belongs. */
    JOB_WRONG_TYPE(Outcome.JOB),
    /** A length that cannot be read, or is not a length. */
    JOB_BAD_LENGTH(Outcome.JOB),
    /** A number that cannot be used, such as NaN. */
    JOB_BAD_NUMBER(Outcome.JOB),
    /** A value outside its range. */
    JOB_OUT_OF_RANGE(Outcome.JOB),
    /** A word that is not one of the allowed ones. */
    JOB_UNKNOWN_WORD(Outcome.JOB),
    /** Two keys that contradict each other. */
    JOB_CONFLICT(Outcome.JOB),
    /** A title with letters that templates and programs cannot show. */
    JOB_TITLE_LETTERS(Outcome.JOB),
    /** A value that is planned but not built in this version. */
    JOB_NOT_IN_THIS_VERSION(Outcome.JOB),
    /** A profile that is not known. */
    PROFILE_UNKNOWN(Outcome.JOB),
    /** A profile file that cannot be used. */
    PROFILE_WRONG(Outcome.JOB),
    /** A label sheet whose labels do not fit on it. */
    LABEL_SHEET(Outcome.JOB),
    /** A row of a trial piece's measurements. */
    TRIAL_ROWS(Outcome.JOB),
    /** A portion of the dome that does not exist. */
    DOME_PORTION(Outcome.JOB),
    /** An opening that names what the dome does not have. */
    DOME_OPENING(Outcome.PLAN),
    /** A frame's file that is none, or of no known format. */
    FRAME_FILE(Outcome.JOB),
    /** A line or a record of a frame's file that makes no sense. */
    FRAME_SYNTAX(Outcome.JOB),
    /** The unit of a frame's file. */
    FRAME_UNIT(Outcome.JOB),
    /** A coordinate that is no number or too large. */
    FRAME_COORDINATE(Outcome.JOB),
    /** A member without length, given twice, or a node without members. */
    FRAME_MEMBER(Outcome.JOB),
    /** Members that meet away from a node. */
    FRAME_CROSSING(Outcome.JOB),
    /** A frame that is larger than can be read. */
    FRAME_LIMIT(Outcome.JOB),
    /** An inventory of offcuts that is not there, or does not belong to the job's stock. */
    OFFCUT_FILE(Outcome.JOB),
    /** The price file is not there, or a line of it cannot be read. */
    PRICE_FILE(Outcome.JOB),
    /** A price for something that is not known. */
    PRICE_UNKNOWN(Outcome.JOB),
    /** Prices that no plan can use. */
    PRICE_UNUSED(Outcome.PLAN),
    /** A foot that was brought to one plane. */
    FOOT_LEVELLED(Outcome.PLAN),

    /** A hub with too few or too many struts. */
    HUB_STRUTS(Outcome.PLAN),
    /** A hub whose axis is open, or a strut that leans too far from its plane. */
    HUB_AXIS(Outcome.PLAN),
    /** A hub whose struts all lie on one side. */
    HUB_ONE_SIDED(Outcome.PLAN),
    /** Hubs whose collars would meet. */
    HUB_SPACING(Outcome.PLAN),
    /** How unequally the struts of a hub lean. */
    HUB_TILTS(Outcome.PLAN),
    /** A frame in several pieces. */
    FRAME_APART(Outcome.PLAN),
    /** A frame that may be a mechanism. */
    FRAME_MECHANISM(Outcome.PLAN),
    /** A strut that is longer than any stick of its stock. */
    STRUT_BEYOND_STOCK(Outcome.PLAN),
    /** A collar or a centre ring that no stick of its stock gives. */
    PIECE_BEYOND_STOCK(Outcome.PLAN),
    /** Pieces for which no stock is left. */
    STOCK_USED_UP(Outcome.PLAN),
    /** A cut that is wider than a piece is long. */
    SAW_KERF(Outcome.PLAN),
    /** A cutting plan that is not proven to be the best. */
    STOCK_PLAN_GAP(Outcome.PLAN),
    /** How many struts a stick of stock gives. */
    STOCK_YIELD(Outcome.PLAN),

    /** No cutter of the racks lets the strut reach its angle. */
    HOLE_NO_CUTTER(Outcome.PLAN),
    /** What a limit on the number of cutters costs. */
    CUTTERS_FEW(Outcome.PLAN),
    /** The hole is as wide as the collar's bore. */
    HOLE_TOO_WIDE(Outcome.PLAN),
    /** A hole lets the strut lean further than it needs to. */
    HOLE_SLACK(Outcome.PLAN),
    /** A hole stops the strut before it has its angle. */
    HOLE_SHORT_OF_REACH(Outcome.PLAN),
    /** A shared hole lets a strut lean too far beyond its axial angle. */
    HOLE_EXTRA_LEAN(Outcome.PLAN),
    /** A strut's line passes its hub's axis further off than the limit. */
    HUB_MISS(Outcome.PLAN),
    /** How many patterns are shared, and what it costs. */
    PATTERNS_SHARED(Outcome.PLAN),
    /** How far a hub can move before its struts bind. */
    HUB_MOVEMENT(Outcome.PLAN),
    /** Which bin of natural stock a job drills. */
    STRUT_BINS(Outcome.PLAN),
    /** The web between two holes. */
    WEB_BETWEEN_HOLES(Outcome.PLAN),
    /** The web between a hole and the collar's edge. */
    WEB_TO_EDGE(Outcome.PLAN),
    /** How far the strut reaches through the inner rim. */
    STRUT_ENGAGEMENT(Outcome.PLAN),
    /** Neighbouring strut ends inside the collar. */
    STRUT_CROWDING(Outcome.PLAN),
    /** A strut that is too short for its two ends. */
    STRUT_TOO_SHORT(Outcome.PLAN),
    /** The tie hole and the strut's end or side. */
    STRUT_TIE_HOLE(Outcome.PLAN),
    /** A tie hole is nearer to the strut's end than is usual for a bolt. */
    TIE_HOLE_EDGE(Outcome.PLAN),
    /** A tie hole is wider than is usual for the strut's side. */
    TIE_HOLE_SIDE(Outcome.PLAN),
    /** Flattened ends against the holes that struts go through. */
    FLAT_ENDS(Outcome.PLAN),
    /** A flattened end reaches into the collar's wall. */
    STRUT_FLAT(Outcome.PLAN),
    /** The room between the centre ring and the collar. */
    RING_CLEARANCE(Outcome.PLAN),
    /** Whether the centre ring covers every strut end. */
    RING_COVER(Outcome.PLAN),
    /** How far a strut can be pushed into a collar so that its other end can enter. */
    STRUT_TRAVEL(Outcome.PLAN),
    /** Whether the centre ring can go in when all struts are seated. */
    RING_LAST(Outcome.PLAN),
    /** Struts that cannot be put in. */
    ASSEMBLY_STUCK(Outcome.PLAN),
    /** Struts that have to bow to be put in. */
    ASSEMBLY_BOW(Outcome.PLAN),
    /** Parts that have to be held while the frame is raised. */
    ASSEMBLY_HELD(Outcome.PLAN),
    /** A size that is nominal and was not measured. */
    NOT_MEASURED(Outcome.PLAN),
    /** What a trial piece says of the holes, and whether it is of the collar's own pipe. */
    TRIAL_PIECE(Outcome.PLAN),
    /** A test collar with too few holes. */
    TRIAL_LADDER(Outcome.PLAN),
    /** An index plate whose notches or numbers have no room. */
    INDEX_PLATE(Outcome.PLAN),
    /** A pipe too narrow for a template that is laid in it. */
    INSIDE_TEMPLATE(Outcome.PLAN),
    /** A part that is larger than the sheet that it is cut from. */
    SHEET_TOO_SMALL(Outcome.PLAN),
    /** PVC, CPVC or vinyl under a laser or plasma torch. */
    LASER_PVC(Outcome.PLAN),

    /** A cutter whose speed the spindle cannot turn. */
    SPINDLE_RANGE(Outcome.PLAN),
    /** A cutter that is too short for the cut. */
    CUTTER_REACH(Outcome.PLAN),
    /** A drill that would meet the far wall. */
    FAR_WALL(Outcome.PLAN),
    /** A move outside the machine's travel. */
    MACHINE_TRAVEL(Outcome.PLAN),
    /** A cutter that would meet the jaws of the chuck. */
    CLAMP_ZONE(Outcome.PLAN),
    /** A stick that stands far out of the jaws without a support. */
    FREE_END(Outcome.PLAN),
    /** A stick of pipe too short for the chuck and a collar. */
    STICK_TOO_SHORT(Outcome.PLAN),
    /** A machine that cannot do what the job asks. */
    MACHINE_UNABLE(Outcome.PLAN),

    /** A file of the pack was changed or added since it was made. */
    PACK_EDITED(Outcome.WRITE),
    /** A folder that is not a pack. */
    PACK_FOREIGN(Outcome.WRITE),
    /** The pack could not be written. */
    PACK_NOT_WRITTEN(Outcome.WRITE),

    /** A program from outside that is none, or whose plan is not known. */
    PROGRAM_FILE(Outcome.JOB),
    /** A program from outside that differs from the planned one. */
    PROGRAM_DIFFERS(Outcome.PLAN),
    /** A cut file that cannot be read as one. */
    DRAWING_FILE(Outcome.JOB),

    /** A program did not pass its rehearsal. */
    REHEARSAL_FAILED(Outcome.FAULT),
    /** A drawing, or a cut file read back, did not pass its lint. */
    SHEET_FAULT(Outcome.FAULT),
    /** Anything else that is the program's own fault. */
    PROGRAM_FAULT(Outcome.FAULT);

    private final Outcome outcome;

    Code(Outcome outcome) {
        this.outcome = outcome;
    }

    /**
     * Returns what a stop of this kind means for a command.
     *
     * @return the outcome with its exit code
     */
    public Outcome outcome() {
        return outcome;
    }
}
