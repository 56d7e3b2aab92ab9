package leverwright.mechanics.study;

import leverwright.mechanics.numeric.Trigonometry;

/**
 * Force across and along a disc (or any joint face) under a net force and one muscle.
 *
 * <p>The face leans forward by δ from level: its normal is (sin δ, cos δ), its forward direction (cos δ, −sin δ). The muscle
 * pulls the upper part down, ι backward of the normal's line. With (R_x, R_y) the net force of the lower part on the upper
 * one: compression C = R_x·sin δ + R_y·cos δ + F·cos ι + F_a, forward shear S = R_y·sin δ − R_x·cos δ − F·sin ι (forces on the
 * upper part, resolved; derived here). F_a pulls along the normal in front.
 *
 * @param compression across the face, N
 * @param shear what would push the upper part forward along it, N
 */
record DiscLoad(double compression, double shear) {
    static DiscLoad of(
            double forceX, double forceY, double tilt, double extensors, double inclination, double abdominals) {
        double sine = Trigonometry.sine(tilt);
        double cosine = Trigonometry.cosine(tilt);
        return new DiscLoad(
                forceX * sine + forceY * cosine + extensors * Trigonometry.cosine(inclination) + abdominals,
                forceY * sine - forceX * cosine - extensors * Trigonometry.sine(inclination));
    }
}
