package leverwright.run.gate;

import java.util.List;
import java.util.Map;

/**
 * What the gate said to the classes of a cell.
 *
 * @param refusals what was refused, in order of appearance; empty when all is well
 * @param classes the rewritten classes by name with dots; empty when something was refused
 */
public record GateResult(List<Refusal> refusals, Map<String, byte[]> classes) {}
