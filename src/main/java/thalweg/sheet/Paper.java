package thalweg.sheet;

/**
 * What a sheet is printed on.
 */
public enum Paper {
    /** Source: ISO 216. */
    A4(210, 297),
    /** Source: ANSI/ASME Y14.1, size A. */
    LETTER(215.9, 279.4),
    /** Four small pages on one side of A4, which is folded twice. */
    POCKET(105, 148.5);

    private final double widthMillimetres;
    private final double heightMillimetres;

    Paper(double widthMillimetres, double heightMillimetres) {
        this.widthMillimetres = widthMillimetres;
        this.heightMillimetres = heightMillimetres;
    }

    /** Width of one page of the sheet [mm]. */
    public double widthMillimetres() {
        return widthMillimetres;
    }

    /** Height of one page of the sheet [mm]. */
    public double heightMillimetres() {
        return heightMillimetres;
    }
}
