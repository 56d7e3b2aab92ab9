package leverwright.face.desk.editor;

/**
 * The stretch in which two texts differ; never beginning or ending within a surrogate pair.
 *
 * @param start the first offset that differs, in both
 * @param endBefore the end of the stretch in the text of before
 * @param endAfter the end of the stretch in the text of after
 */
record TextDifference(int start, int endBefore, int endAfter) {

    static TextDifference between(String before, String after) {
        int most = Math.min(before.length(), after.length());
        int start = 0;
        while (start < most && before.charAt(start) == after.charAt(start)) {
            start++;
        }
        if (start > 0 && Character.isHighSurrogate(before.charAt(start - 1))) {
            start--;
        }
        int same = 0;
        while (same < most - start
                && before.charAt(before.length() - 1 - same) == after.charAt(after.length() - 1 - same)) {
            same++;
        }
        if (same > 0 && Character.isLowSurrogate(before.charAt(before.length() - same))) {
            same--;
        }
        return new TextDifference(start, before.length() - same, after.length() - same);
    }
}
