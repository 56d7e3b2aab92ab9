package leverwright.mechanics.equilibrium;

/** What holds a linkage. */
public sealed interface Support permits GroundSupport, FixedSupport, TwoContacts {}
