package jackwork.layout;

/**
 * Sheets side by side, far enough apart that pieces on different ones never meet. The last one is being shortened.
 *
 * @param length of a whole sheet, mm; very long for a strip
 * @param width mm
 */
record Room(double length, double width) {

    /** Where a sheet begins. */
    double start(int sheet) {
        return sheet * (length + 1);
    }
}
