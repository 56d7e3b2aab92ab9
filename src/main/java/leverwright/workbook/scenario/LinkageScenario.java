package leverwright.workbook.scenario;

import java.util.List;
import leverwright.mechanics.equilibrium.Support;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Linkage;

/**
 * A scenario of kind "linkage".
 *
 * @param gravity m/s², along −y
 */
record LinkageScenario(
        double gravity, Linkage linkage, Configuration configuration, List<Load> loads, Support support) {}
