package picture

import (
	"saltbite/calc/artwork"
	"saltbite/calc/evenness"
	"saltbite/calc/field"
)

// Classic is a picture to learn from without a picture of one's own: "line", a lone line
// beside an open field, or "frame", a field in a frame. What is exposed is white. It comes
// with the fields but those that say how a picture of one's own is read.
func Classic(name string, fields *field.Set) (artwork.Picture, *field.Set, bool) {
	var c evenness.Classic
	switch name {
	case "line":
		c = evenness.LoneLine()
	case "frame":
		c = evenness.Frame()
	default:
		return artwork.Picture{}, fields, false
	}
	p := artwork.Picture{Width: c.Picture.Columns, Height: c.Picture.Rows, Grey: make([]byte, len(c.Picture.Open)),
		DensityX: float64(c.Picture.Columns) / c.Width, DensityY: float64(c.Picture.Rows) / c.Height}
	for i, share := range c.Picture.Open {
		p.Grey[i] = byte(255 * share)
	}
	return p, fields.Without(field.Black, field.Threshold, field.Corners, field.Ruler, field.RulerLength), true
}
