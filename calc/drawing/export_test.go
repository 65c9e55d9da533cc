package drawing

// WidthOf and Wrap lend the measuring of texts to the tests.
var (
	WidthOf = widthOf
	Wrap    = wrap
)
