package leverwright.face.desk.sheet;

/** What a strip asks of its sheet. */
interface StripDeeds {

    /** Adds a script, or else a note, at a place of the sheet, and goes there. */
    void add(boolean script, int index);

    /** Moves a cell to a place of the sheet, and goes there. */
    void move(String cell, int index);

    /** Follows the mouse that drags a cell; its height in the scene. */
    void dragging(String cell, double sceneY);

    /** Puts a dragged cell where the mouse let it go; its height in the scene. */
    void dropped(String cell, double sceneY);
}
