package org.woodyield.wood;

import org.woodyield.measure.Domain;
import org.woodyield.source.Sources;
import org.woodyield.working.Working;

/**
 * Turns a radial and a tangential measure of movement to the width and the thickness of a piece, as strains are turned: the
 * width has T cos² + R sin², the thickness T sin² + R cos², of the angle between the annual rings and the wide face. The sum
 * of the two is R + T at every angle.
 *
 * @see org.woodyield.source.Sources source ring-angle
 */
final class RingAngle {

    static final Domain DEGREES =
            new Domain("ring angle", "degrees", 0, 90, "give 0 for flat-sawn, 90 for quarter-sawn");

    private RingAngle() {}

    static double turned(Face face, double radial, double tangential, double degrees) {
        double angle = degrees * Math.PI / 180;
        double along = StrictMath.cos(angle) * StrictMath.cos(angle);
        double across = StrictMath.sin(angle) * StrictMath.sin(angle);
        return face == Face.WIDTH ? tangential * along + radial * across : tangential * across + radial * along;
    }

    /** The angle as given. */
    static Working.Builder given(Working.Builder working, double degrees) {
        return working.given("angle", "angle between rings and wide face", degrees, "degrees");
    }

    /** The shares c along and s across the face, of the angle given before. */
    static Working.Builder shares(Working.Builder working) {
        return working.step("t", "the angle in radians", "angle * pi / 180", "", Sources.get("definition"))
                .step("c", "share along the face", "cos(t) * cos(t)", "", Sources.get("ring-angle"))
                .step("s", "share across the face", "sin(t) * sin(t)", "", Sources.get("ring-angle"));
    }

    /** The formula of what is turned, from the symbols of its two parts and the shares. */
    static String formula(Face face, String radial, String tangential) {
        return face == Face.WIDTH ? tangential + " * c + " + radial + " * s" : tangential + " * s + " + radial + " * c";
    }
}
