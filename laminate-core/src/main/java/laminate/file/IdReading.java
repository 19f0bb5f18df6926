package laminate.file;

/** Reads the name by which a material or a schedule is called. */
class IdReading extends ScalarReading<String> {

    /** What was probably meant by a text that is no id: the beginning of what is accepted. */
    String hint(String text) {
        return "";
    }

    @Override
    final String of(String text) {
        String id = text.strip();
        if (!isId(id)) {
            throw new IllegalArgumentException(Complaints.shown(id) + " is no id; " + hint(id)
                    + "lower-case letters and digits joined by hyphens are accepted, as in mat-300");
        }
        return id;
    }

    /** Runs of letters and digits, joined by one hyphen or point each. */
    private static boolean isId(String text) {
        boolean joined = true;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean joint = c == '-' || c == '.';
            if (joint && joined || !joint && !isLetterOrDigit(c)) {
                return false;
            }
            joined = joint;
        }
        return !joined;
    }

    private static boolean isLetterOrDigit(char c) {
        return c >= 'a' && c <= 'z' || c >= '0' && c <= '9';
    }
}
