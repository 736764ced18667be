package org.woodyield.scaling;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.woodyield.log.Log;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.scaling.ScalingConvention.Split;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;

/**
 * The rule and the convention of a place, by law or by a written practice; {@link #scale} is all that is needed. What its
 * source leaves open is filled from {@link ScalingConvention#plain()}, and the convention's notes say so. Current law is
 * for the reader to look up; the edition read stands in the source.
 */
public enum Jurisdiction {
    /** Michigan: International 1/4-inch. */
    MICHIGAN(
            "michigan",
            "Michigan",
            "international-quarter",
            "mcl-290-401",
            Taken.of(Rounding.HALF_DOWN, 1, 40),
            Notes.HALVES,
            Notes.OPEN),
    /** Massachusetts: International 1/4-inch unless another method is agreed. */
    MASSACHUSETTS(
            "massachusetts",
            "Massachusetts",
            "international-quarter",
            "mass-96-11a",
            Taken.of(Rounding.HALF_DOWN, 1, 40),
            Notes.HALVES,
            Notes.OPEN),
    /** Louisiana: Doyle on the small end inside bark. */
    LOUISIANA(
            "louisiana",
            "Louisiana",
            "doyle",
            "la-rs-3-4641",
            Taken.of(Rounding.HALF_DOWN, 1, 40),
            Notes.HALVES,
            Notes.OPEN),
    /** Georgia: Scribner Decimal C, two logs from 18 ft, three or more from 34 ft. */
    GEORGIA(
            "georgia",
            "Georgia",
            "scribner-decimal-c",
            "ga-2-14-80",
            Taken.of(Rounding.HALF_EVEN, 2, 16),
            "Exact half inches are to go up and down evenly; here they go to the even inch, the same for every log of one size.",
            Notes.PARTS),
    /** Minnesota: Scribner Decimal C, even feet above 8 and under 24. */
    MINNESOTA(
            "minnesota",
            "Minnesota",
            "scribner-decimal-c",
            "minn-239-33",
            Taken.of(Rounding.HALF_DOWN, 2, 22),
            Notes.HALVES,
            Notes.PARTS,
            "The law speaks of even feet above 8; shorter logs are scaled all the same here."),
    /** Vermont: its own rule in sections of 12 ft from the small end. */
    VERMONT(
            "vermont",
            "Vermont (Vermont rule)",
            "vermont",
            "vt-9-2693",
            Taken.of(Rounding.HALF_DOWN, 1, 12).wholeFromSmallEnd(),
            Notes.HALVES,
            "The diameter of a lower section comes from the log's own taper: its measured profile, or without one the straight line from end to end."),
    /** Vermont: International 1/4-inch, which the law allows beside its own rule. */
    VERMONT_INTERNATIONAL(
            "vermont-international",
            "Vermont (International 1/4-inch)",
            "international-quarter",
            "vt-9-2693",
            Taken.of(Rounding.HALF_DOWN, 1, 40),
            Notes.HALVES,
            Notes.OPEN),
    /** Maine: International 1/4-inch; by agreement also the International 1/8-inch and two rules that are not in this library. */
    MAINE(
            "maine",
            "Maine",
            "international-quarter",
            "maine-382",
            Taken.of(Rounding.HALF_DOWN, 1, 40),
            "The regulation prints the standard as '1/14 Inch'; 1/4 inch is meant. By agreement the Bangor, the Maine (Holland) and the International 1/8-inch rule stay lawful.",
            Notes.HALVES,
            Notes.OPEN),
    /** California, timber yield tax: Scribner Decimal C up to 20 ft. */
    CALIFORNIA(
            "california",
            "California, timber yield tax",
            "scribner-decimal-c",
            "ca-18-1022",
            Taken.of(Rounding.HALF_DOWN, 1, 20),
            Notes.HALVES,
            Notes.WHOLE_FEET,
            Notes.PARTS),
    /** Washington, timber excise tax, west-side areas: Scribner Decimal C with the long-log factors. */
    WASHINGTON_WEST(
            "washington-west",
            "Washington, timber excise tax, west side",
            "scribner-factors",
            "wac-458-40-680",
            Taken.of(Rounding.DOWN, 1, 40),
            "The law names the Official Log Scaling and Grading Rules, which are not at hand: diameters down to the inch and up to 40 ft as one are west-side practice as taught.",
            Notes.PARTS),
    /** Washington, timber excise tax, areas 6 and 7: Scribner Decimal C. */
    WASHINGTON_EAST(
            "washington-east",
            "Washington, timber excise tax, areas 6 and 7",
            "scribner-decimal-c",
            "wac-458-40-680",
            Taken.of(Rounding.HALF_DOWN, 1, 20),
            "The law names the Eastside Log Scaling Handbook, which is not at hand: up to 20 ft as one is the east-side practice of the Forest Service.",
            Notes.HALVES,
            Notes.PARTS),
    /** Tongass National Forest: Scribner Decimal C up to 40 ft. */
    TONGASS(
            "tongass",
            "Tongass National Forest",
            "scribner-decimal-c",
            "r10-2409-11",
            Taken.of(Rounding.HALF_DOWN, 1, 40),
            Notes.HALVES,
            Notes.WHOLE_FEET,
            Notes.PARTS),
    /** Chugach National Forest: Scribner Decimal C up to 20 ft. */
    CHUGACH(
            "chugach",
            "Chugach National Forest",
            "scribner-decimal-c",
            "r10-2409-11",
            Taken.of(Rounding.HALF_DOWN, 1, 20),
            Notes.HALVES,
            Notes.WHOLE_FEET,
            Notes.PARTS),
    /** Idaho practice: Scribner Decimal C; a whole-inch class runs from half an inch below, included, to half above. */
    IDAHO(
            "idaho",
            "Idaho, Board of Scaling Practices",
            "scribner-decimal-c",
            "idaho-scaling",
            Taken.of(Rounding.HALF_UP, 1, 20),
            "The greatest scaling length of 20 ft is not in this source; it is east-side practice.",
            Notes.PARTS),
    /** Illinois: Doyle as a court defined it in 1916. */
    ILLINOIS(
            "illinois",
            "Illinois (case of 1916)",
            "doyle",
            "morrison-1916",
            Taken.of(Rounding.HALF_DOWN, 1, 40),
            "A court's definition of the rule, no statute.",
            Notes.HALVES,
            Notes.OPEN),
    /** Arkansas, historic: Doyle, compulsory. */
    ARKANSAS_1901(
            "arkansas-1901",
            "Arkansas (historic)",
            "doyle",
            "sizes-statutes",
            Taken.of(Rounding.HALF_DOWN, 1, 40),
            Notes.HISTORIC,
            Notes.HALVES,
            Notes.OPEN),
    /** Florida, historic: Doyle, compulsory. */
    FLORIDA_1889(
            "florida-1889",
            "Florida (historic)",
            "doyle",
            "sizes-statutes",
            Taken.of(Rounding.HALF_DOWN, 1, 40),
            Notes.HISTORIC,
            Notes.HALVES,
            Notes.OPEN),
    /** Mississippi, historic: Doyle, compulsory, named there after the book that printed it. */
    MISSISSIPPI_1917(
            "mississippi-1917",
            "Mississippi (historic)",
            "doyle",
            "sizes-statutes",
            Taken.of(Rounding.HALF_DOWN, 1, 40),
            Notes.HISTORIC,
            Notes.HALVES,
            Notes.OPEN),
    /** West Virginia, historic: Doyle and Scribner combined, optional. */
    WEST_VIRGINIA_1919(
            "west-virginia-1919",
            "West Virginia (historic)",
            "doyle-scribner",
            "sizes-statutes",
            Taken.of(Rounding.HALF_DOWN, 1, 40),
            Notes.HISTORIC,
            Notes.HALVES,
            Notes.OPEN),
    /** New Jersey, practice of 1943: Doyle on the diameter half way along. */
    NEW_JERSEY_1943(
            "new-jersey-1943",
            "New Jersey, practice of 1943",
            "doyle",
            "moore-1943",
            Taken.of(Rounding.HALF_DOWN, 1, 40).at(DiameterAt.MIDDLE),
            Notes.HALVES,
            Notes.OPEN),
    /** Adirondacks: the market of 19 in by 13 ft. */
    ADIRONDACK(
            "adirondack",
            "Adirondacks, practice",
            "adirondack",
            "adirondack-almanack",
            Taken.of(Rounding.HALF_DOWN, 1, 40),
            "Up to 4 in over the length are disregarded as trim; here the rest of a foot is. Diameters go to the inch here, though the half inch was read too.",
            Notes.HALVES),
    /** Forest Service about 1911: Scribner Decimal C up to 16 ft; Alaska and the west slope of the Cascades excepted. */
    FOREST_SERVICE_1911(
            "forest-service-1911",
            "Forest Service, about 1911",
            "scribner-decimal-c",
            "bailey-1911",
            Taken.of(Rounding.HALF_DOWN, 1, 16),
            "The parts of a longer log should not be under 12 ft if that can be avoided; nearly equal parts are not held to it here.",
            Notes.HALVES,
            Notes.PARTS),
    /** Forest Service about 1920, Alaska and west of the Cascades: up to 32 ft as one, even feet. */
    FOREST_SERVICE_WEST_1920(
            "forest-service-west-1920",
            "Forest Service, west of the Cascades, about 1920",
            "scribner-factors",
            "bulletin-711",
            Taken.of(Rounding.HALF_DOWN, 2, 32),
            "Logs were cut 2 to 9 in over a standard length and the extra disregarded; here all above the even foot is.",
            Notes.HALVES,
            Notes.PARTS),
    /** National Forests, handbook: Scribner Decimal C, division at 20 ft; the trim of 6 in is recalled. */
    NATIONAL_FOREST(
            "national-forest",
            "National Forests, east-side handbook",
            "scribner-decimal-c",
            "fsh-trim-memory",
            Taken.of(Rounding.HALF_DOWN, 1, 20).trim(6),
            "Division at 20 ft is in the handbook's appendix 1; the trim of 6 in is recalled with medium confidence, and rises with length in some regions.",
            Notes.HALVES,
            Notes.PARTS),
    /** Pacific Northwest, commercial practice of 1953: no taper allowance under 42 ft. */
    NORTHWEST_1953(
            "northwest-1953",
            "Pacific Northwest, commercial practice of 1953",
            "scribner-factors",
            "staebler-1953",
            Taken.of(Rounding.DOWN, 1, 40),
            "A log under 42 ft is scaled as one without regard to its taper; the factors here end at 40 ft. Diameters down to the inch are practice as taught, not in this source.",
            Notes.PARTS),
    /** A forestry contest in Idaho: 4 in of trim, classes of 2 ft, the half inch of an averaged diameter dropped. */
    IDAHO_CONTEST(
            "idaho-contest",
            "Idaho, forestry contest",
            "scribner-decimal-c",
            "minidoka-contest",
            Taken.of(Rounding.DOWN, 2, 20).trim(4).eachAxis(Rounding.HALF_UP),
            "Each way through the end is read to the nearest inch, the half up, before the mean is taken: not stated there. Nor is the greatest length of 20 ft.",
            Notes.PARTS),
    /** Scaling as taught at the University of Idaho, east side: diameters down, length to the nearest foot, up to 16 ft. */
    IDAHO_COURSE_EAST(
            "idaho-course-east",
            "University of Idaho course, east side",
            "scribner-decimal-c",
            "for-274",
            Taken.of(Rounding.DOWN, 1, 16).length(Rounding.HALF_DOWN),
            Notes.NEAREST_FOOT,
            Notes.PARTS),
    /** Scaling as taught at the University of Idaho, west side: diameters down, length to the nearest foot, up to 40 ft. */
    IDAHO_COURSE_WEST(
            "idaho-course-west",
            "University of Idaho course, west side",
            "scribner-factors",
            "for-274",
            Taken.of(Rounding.DOWN, 1, 40).length(Rounding.HALF_DOWN),
            "The course says 20 to 40 ft; 40 ft is taken here.",
            Notes.NEAREST_FOOT,
            Notes.PARTS);

    /** What a source does not say, and how it is filled. */
    private static final class Notes {
        static final String HALVES = "The source does not say what an exact half inch does; it is dropped here.";
        static final String PARTS =
                "Which part of a divided log gets the odd step is not stated; the lower one gets it here.";
        static final String OPEN =
                "The source states neither trim nor the greatest scaling length; the rest of a foot is"
                        + " dropped and up to 40 ft are scaled as one here.";
        static final String WHOLE_FEET = "Length is taken to the foot below here.";
        static final String NEAREST_FOOT =
                "Length goes to the nearest foot; an exact half is dropped, which is not stated.";
        static final String HISTORIC = "Of old, as a list of units gives it; hardly the law of today.";

        private Notes() {}
    }

    /** How diameter and length are taken. */
    private record Taken(
            Rounding diameter,
            Optional<Rounding> axes,
            int trimInches,
            int stepFeet,
            Rounding length,
            int greatestFeet,
            Split split,
            Optional<DiameterAt> at) {

        static Taken of(Rounding diameter, int stepFeet, int greatestFeet) {
            return new Taken(
                    diameter,
                    Optional.empty(),
                    0,
                    stepFeet,
                    Rounding.DOWN,
                    greatestFeet,
                    Split.NEARLY_EQUAL,
                    Optional.empty());
        }

        Taken trim(int inches) {
            return new Taken(diameter, axes, inches, stepFeet, length, greatestFeet, split, at);
        }

        Taken length(Rounding rounding) {
            return new Taken(diameter, axes, trimInches, stepFeet, rounding, greatestFeet, split, at);
        }

        Taken eachAxis(Rounding rounding) {
            return new Taken(diameter, Optional.of(rounding), trimInches, stepFeet, length, greatestFeet, split, at);
        }

        Taken wholeFromSmallEnd() {
            return new Taken(
                    diameter, axes, trimInches, stepFeet, length, greatestFeet, Split.WHOLE_FROM_SMALL_END, at);
        }

        Taken at(DiameterAt where) {
            return new Taken(diameter, axes, trimInches, stepFeet, length, greatestFeet, split, Optional.of(where));
        }
    }

    /** Places that somebody looks for and that cannot be answered, with the reason. */
    private static final Map<String, String> WITHOUT_A_RULE = Map.of(
            "new-hampshire",
            "no law of the state sets how logs are scaled (University of New Hampshire Extension, best log scaling practices);"
                    + " name a rule and a convention",
            "newfoundland",
            "its log rule is named in CNLR 987/96, but the formula is not at hand; name another rule and a convention");

    private final String id;
    private final String label;
    private final String rule;
    private final String source;

    // Both are immutable; the compiler's check knows neither records nor List.of.
    @SuppressWarnings("ImmutableEnumChecker")
    private final Taken taken;

    @SuppressWarnings("ImmutableEnumChecker")
    private final List<String> notes;

    Jurisdiction(String id, String label, String rule, String source, Taken taken, String... notes) {
        this.id = id;
        this.label = label;
        this.rule = rule;
        this.source = source;
        this.taken = taken;
        this.notes = List.of(notes);
    }

    /**
     * A jurisdiction by its id.
     *
     * @param id for example {@code georgia}
     * @return the jurisdiction
     * @throws OutOfDomainException if there is none; names all that there are, or why a place has none
     */
    public static Jurisdiction byId(String id) {
        return Arrays.stream(values())
                .filter(one -> one.id.equals(id))
                .findFirst()
                .orElseThrow(() -> new OutOfDomainException(
                        "jurisdiction",
                        "'" + id + "'",
                        "",
                        Arrays.stream(values()).map(Jurisdiction::id).collect(Collectors.joining(", ")),
                        WITHOUT_A_RULE.getOrDefault(id, "take one of these ids, or name rule and convention")));
    }

    /**
     * The key.
     *
     * @return lower case
     */
    public String id() {
        return id;
    }

    /**
     * The place as shown.
     *
     * @return a short phrase
     */
    public String label() {
        return label;
    }

    /**
     * The rule of the place.
     *
     * @return one of {@link LogRules}
     */
    public LogRule rule() {
        return LogRules.byId(rule);
    }

    /**
     * What states rule and convention.
     *
     * @return statute or practice with its edition
     */
    public Source source() {
        return Sources.get(source);
    }

    /**
     * The convention of the place.
     *
     * @return its notes name what the source leaves open
     */
    public ScalingConvention convention() {
        return new ScalingConvention(
                id,
                label,
                Length.inches(1),
                taken.diameter,
                taken.axes,
                Length.inches(taken.trimInches),
                Length.feet(taken.stepFeet),
                taken.length,
                Length.feet(taken.greatestFeet),
                taken.split,
                taken.at,
                source(),
                notes);
    }

    /**
     * Scales a log as this place does.
     *
     * @param log the log
     * @return the scale
     * @throws OutOfDomainException if the log has no scaling length there, or the rule refuses a segment
     */
    public Scale scale(Log log) {
        return Scale.of(log, rule(), convention());
    }
}
