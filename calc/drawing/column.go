package drawing

import "math"

// Pictures on the page share a frame, mm, and a column of words at its right.
const (
	frameWidth, frameHeight = 100, 50
	wordSize                = 4.4 // of all their texts: 14 px where a frame is 320 px wide
	rowHeight               = 4.6
	columnBottom            = 37 // where the last pair may stand
)

// note is a word and a figure with the height of what they are about.
type note struct {
	word, figure string
	at           float64
}

// spread says where notes stand that are in order of their heights: each as
// near to its thing as the others let it, none over another, from top on.
func spread(notes []note, top float64) []float64 {
	const pair = 2 * rowHeight
	rows := make([]float64, len(notes))
	least := top
	for i, n := range notes {
		rows[i] = math.Max(n.at-1, least)
		least = rows[i] + pair
	}
	most := float64(columnBottom)
	for i := len(rows) - 1; i >= 0; i-- {
		rows[i] = math.Min(rows[i], most)
		most = rows[i] - pair
	}
	return rows
}

// insert puts a note in its place by height.
func insert(notes []note, n note) []note {
	at := len(notes)
	for at > 0 && notes[at-1].at > n.at {
		at--
	}
	return append(notes[:at:at], append([]note{n}, notes[at:]...)...)
}

// pair writes a word with its figure under it.
func (d *Drawing) pair(word, figure string, x, y, room float64) {
	d.write(Word, word, x, y, wordSize, Start)
	d.write(Figure, figure, x, y+rowHeight, wordSize, Start)
	d.bold(room)
}

// noteColumn writes notes beside a chain of depths, the first at a height or below, each
// with a leader from the chain or from the level to leave.
func (d *Drawing) noteColumn(notes []note, top, chain float64) {
	for i, y := range spread(notes, top) {
		n, from := notes[i], chain
		if n.word == leaveAtLeast {
			from = chainX + keepOver
		}
		d.add(Leader, segment(from, n.at, columnX-0.6, y+1))
		d.pair(n.word, n.figure, columnX, y, columnRight-columnX)
	}
}
