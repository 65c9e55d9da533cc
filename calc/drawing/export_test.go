package drawing

// WidthOf lends the table of widths to the tests that measure boxes.
var WidthOf = widthOf
