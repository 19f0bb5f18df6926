package laminate.file;

/**
 * A place in a text file.
 *
 * @param file the file's name as the user gave it
 * @param line the line, counted from 1, or 0 where the file as a whole is meant
 * @param column the character of the line, counted from 1 in Unicode code points, or 0 where the whole file is meant
 */
record Position(String file, int line, int column) {

    /** The file as a whole: one that is not there has no lines to point at. */
    static Position wholeFile(String file) {
        return new Position(file, 0, 0);
    }

    Position right(int characters) {
        return new Position(file, line, column + characters);
    }
}
