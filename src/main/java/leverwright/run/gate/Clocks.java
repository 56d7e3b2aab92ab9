package leverwright.run.gate;

import java.util.Set;

/** Knows the members that tell the time of day: refused whoever trusts the workbook, since digits must stay the same. */
final class Clocks {

    private static final Set<String> MEMBERS = Set.of(
            "java/lang/System.nanoTime",
            "java/lang/System.currentTimeMillis",
            "java/util/Calendar.getInstance",
            "java/util/concurrent/TimeUnit.sleep");

    private Clocks() {}

    static boolean tells(String owner, String name, String descriptor) {
        return MEMBERS.contains(owner + "." + name)
                || (owner.startsWith("java/time/") && name.equals("now"))
                || owner.startsWith("java/time/Clock")
                || owner.startsWith("java/time/InstantSource")
                || (owner.equals("java/util/Date") && name.equals("<init>") && descriptor.equals("()V"))
                || (owner.equals("java/util/GregorianCalendar")
                        && name.equals("<init>")
                        && !descriptor.startsWith("(I"));
    }
}
