package leverwright.run.gate;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.objectweb.asm.ConstantDynamic;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Judges what the classes of one cell use, and keeps the refusals. */
final class Rules {

    private static final Set<String> BOOTSTRAPS = Set.of(
            "java/lang/invoke/LambdaMetafactory.metafactory",
            "java/lang/invoke/LambdaMetafactory.altMetafactory",
            "java/lang/invoke/StringConcatFactory.makeConcatWithConstants",
            "java/lang/runtime/ObjectMethods.bootstrap",
            "java/lang/runtime/SwitchBootstraps.typeSwitch",
            "java/lang/runtime/SwitchBootstraps.enumSwitch");

    private static final Set<String> ARRAY_MEMBERS = Set.of("clone", "getClass", "equals", "hashCode", "toString");

    private final String cell;
    private final AllowList allowed;
    private final boolean trusted;
    private final Hierarchy hierarchy;
    private final Set<Refusal> refusals = new LinkedHashSet<>();
    private int line;

    Rules(String cell, AllowList allowed, boolean trusted, Hierarchy hierarchy) {
        this.cell = cell;
        this.allowed = allowed;
        this.trusted = trusted;
        this.hierarchy = hierarchy;
    }

    List<Refusal> refusals() {
        return new ArrayList<>(refusals);
    }

    void at(int scriptLine) {
        line = scriptLine;
    }

    /** Refuses a thing whoever trusts the workbook. */
    void refuse(String subject, String advice) {
        refusals.add(new Refusal(cell, line, subject, advice));
    }

    /** Refuses a thing unless the workbook is trusted. */
    private void refuseStranger(String subject) {
        if (!trusted) {
            refuse(subject, Advice.on(subject));
        }
    }

    static String dotted(String internal) {
        return internal.replace('/', '.').replace('$', '.');
    }

    private static boolean isCell(String type) {
        return type.startsWith(Gate.CELLS);
    }

    /** A type that is named, in a cast, a catch, a descriptor or a constant. */
    void type(Type type) {
        Type element = type.getSort() == Type.ARRAY ? type.getElementType() : type;
        if (element.getSort() == Type.METHOD) {
            methodType(element.getDescriptor());
        } else if (element.getSort() == Type.OBJECT) {
            String name = element.getInternalName();
            if (!isCell(name) && !allowed.allowsClass(name)) {
                refuseStranger(dotted(name));
            }
        }
    }

    void typeNamed(String internalOrArray) {
        type(Type.getObjectType(internalOrArray));
    }

    void methodType(String descriptor) {
        for (Type argument : Type.getArgumentTypes(descriptor)) {
            type(argument);
        }
        type(Type.getReturnType(descriptor));
    }

    void subclassOf(String parent) {
        if (!isCell(parent) && !allowed.allowsSubclass(parent)) {
            refuseStranger(dotted(parent));
        }
    }

    void field(String owner, String name, String descriptor) {
        type(Type.getType(descriptor));
        member(owner, name, descriptor);
    }

    void method(int opcode, String owner, String name, String descriptor) {
        methodType(descriptor);
        if (owner.startsWith("[")) {
            if (!ARRAY_MEMBERS.contains(name)) {
                refuseStranger(name + " of an array");
            }
            typeNamed(owner);
            return;
        }
        member(owner, name, descriptor);
        if (opcode == Opcodes.INVOKESPECIAL && name.equals("finalize")) {
            refuse("finalize", "leave it out");
        }
    }

    private void member(String owner, String name, String descriptor) {
        String declaring = hierarchy.declaring(owner, name, descriptor);
        if (Clocks.tells(declaring, name, descriptor) || Clocks.tells(owner, name, descriptor)) {
            refuse(dotted(owner) + readable(name), Advice.CLOCK);
            return;
        }
        boolean fine = isCell(declaring) || allowed.allowsMember(declaring, name);
        boolean ownerFine = isCell(owner) || allowed.allowsClass(owner);
        if (!fine || !ownerFine) {
            String shown = ownerFine && !isCell(declaring) ? declaring : owner;
            refuseStranger(dotted(shown) + readable(name));
        }
    }

    private static String readable(String member) {
        return member.equals("<init>") ? "" : "." + member;
    }

    void handle(Handle handle) {
        if (handle.getTag() <= Opcodes.H_PUTSTATIC) {
            field(handle.getOwner(), handle.getName(), handle.getDesc());
            return;
        }
        method(0, handle.getOwner(), handle.getName(), handle.getDesc());
        if (handle.getTag() == Opcodes.H_NEWINVOKESPECIAL
                && handle.getDesc().equals("()V")
                && SeededCalls.isGenerator(handle.getOwner())) {
            refuse(dotted(handle.getOwner()) + "::new", "write () -> new Random()");
        }
    }

    void bootstrap(Handle bootstrap, Object... arguments) {
        String name = bootstrap.getOwner() + "." + bootstrap.getName();
        if (!BOOTSTRAPS.contains(name)) {
            refuse("the bootstrap " + dotted(bootstrap.getOwner()), "write it as a lambda or a method");
        }
        for (Object argument : arguments) {
            constant(argument);
        }
    }

    void constant(Object value) {
        if (value instanceof Handle handle) {
            handle(handle);
        } else if (value instanceof Type type) {
            type(type);
        } else if (value instanceof ConstantDynamic dynamic) {
            refuse("the computed constant " + dynamic.getName(), "compute the value in the cell");
        }
    }
}
