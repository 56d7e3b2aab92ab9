/**
 * Numbers under the mechanics: the one sine and cosine, plane vectors, sums in a fixed order, a seeded random stream and
 * root finding.
 *
 * <p><b>Same bits everywhere.</b> Every method here gives the same 64 bits on every JDK, interpreted or compiled, with one
 * thread or several: only IEEE 754 additions, multiplications, divisions and square roots, and for rarely used functions
 * {@link StrictMath}, whose results the Java specification fixes. No fused multiply-add is used.
 *
 * <p><b>Units.</b> Angles are in radians; all else is as the caller says.
 */
@NullMarked
package leverwright.mechanics.numeric;

import org.jspecify.annotations.NullMarked;
