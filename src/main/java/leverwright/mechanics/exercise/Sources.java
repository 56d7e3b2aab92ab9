package leverwright.mechanics.exercise;

import leverwright.mechanics.body.SourcedValue;

/** Sources of numbers as workings print them. */
final class Sources {
    private Sources() {}

    /** Returns source and reading status of a number, without the signs that a working keeps for itself. */
    static String of(SourcedValue number) {
        return clean(number.source() + "; " + number.status().words());
    }

    static String clean(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        for (int k = 0; k < text.length(); k++) {
            char c = text.charAt(k);
            if (c == '[') {
                plain.append('(');
            } else if (c == ']') {
                plain.append(')');
            } else {
                plain.append(Character.isISOControl(c) ? ' ' : c);
            }
        }
        return plain.toString();
    }
}
