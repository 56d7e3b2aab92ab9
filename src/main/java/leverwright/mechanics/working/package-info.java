/**
 * Steps of a hand calculation as data, and the results that carry them.
 *
 * <p><b>Concept.</b> A {@link leverwright.mechanics.working.Working} is a list of {@link
 * leverwright.mechanics.working.Step steps}, each with its formula as an {@link
 * leverwright.mechanics.working.Expression}; {@link leverwright.mechanics.working.WorkingText} prints it so that a reader
 * with a pocket calculator gets the printed values from the printed inputs. An {@link
 * leverwright.mechanics.working.Answer} is a value with its working; {@link leverwright.mechanics.working.Curves} and
 * {@link leverwright.mechanics.working.Sketch} say what charts and figures are made of.
 *
 * <p><b>Units and frame.</b> SI and radians inside. Printed lines use one unit for each kind: m, kg, N, N·m, J, Pa, N/m,
 * s, rad/s, rad/s², m/s, m/s², W, m², kg·m², and degrees for angles. Signs are those of the quantities; figures use the
 * mechanics frame (x forward, y up).
 *
 * <p><b>Grammar of the printed lines.</b> Machine-readable; {@code ·} is U+00B7, {@code −} is U+2212, {@code °} is
 * U+00B0, {@code ²} is U+00B2, {@code √} is U+221A. Quoted signs stand for themselves, {@code [x]} is optional,
 * {@code {x}} repeats.
 *
 * <pre>
 * working  = title line, { given | step | check | note | end }        one line each
 * given    = name " = " value [ " [" source "]" ]
 * step     = name " = " formula " = " numbers " = " value [ " [" source "]" ]
 * check    = "check: " ( step | given )
 * note     = "note: " words
 * end      = "end: " words                                              last line, if any
 * value    = [ "−" ] number ( "°" | [ " " unit ] )
 * formula  = expr                                                       with names
 * numbers  = expr                                                       without names
 * expr     = [ "−" ] term { ( " + " | " − " ) term }
 * term     = factor { ( "·" | "/" ) factor }                            from left to right
 * factor   = piece [ "²" ]
 * piece    = number [ "°" ] | name | "(" expr ")" | ( "√" | "sin" | "cos" ) "(" expr ")"
 * number   = digit { digit } [ "." digit { digit } ]
 * name     = letter { letter | digit | "_" }                            neither sin nor cos
 * source   = words without [ ] and line breaks
 * </pre>
 *
 * <p><b>Meaning.</b> {@code x°} is x·π/180, sin and cos take radians, so {@code sin(45.00°)} is the sine of 45 degrees. A
 * leading minus turns the sign of the first term. The numbers are the formula with a printed decimal for each name. The
 * value, with d decimals, is what the numbers evaluate to in exact arithmetic (in degrees where it ends in {@code °}),
 * rounded to d decimals; it is never within 10⁻⁹ of its last digit of a tie, so every way of rounding agrees. Names keep
 * one value throughout a working; a name may print with more digits in a later line than where it was stated. Numbers
 * have no exponent, no sign but the minus, and nothing between thousands.
 */
@NullMarked
package leverwright.mechanics.working;

import org.jspecify.annotations.NullMarked;
