package job

import (
	"strconv"
	"strings"

	"saltbite/calc/field"
)

// sentence is the answer in one line: how a run under way stands, what to do
// with the piece, or what a depth alone leaves of the sheet; and what to weigh
// for the bath. It is empty while there is none.
func (b *bench) sentence() string {
	if b.blocked() || b.heavier() {
		return ""
	}
	work := b.courseSentence()
	for _, other := range []func() string{b.bitesSentence, b.biteSentence, b.sheetSentence} {
		if work == "" {
			work = other()
		}
	}
	return strings.TrimSpace(work + " " + b.mixSentence())
}

// courseSentence says how far a watched run has come, by weight before the ammeter.
func (b *bench) courseSentence() string {
	depth, left, by := "depthNow", "timeLeft", "by its weight"
	if !b.has(depth) {
		depth, left, by = "depthSoFar", "readyIn", "by the ammeter"
	}
	if !b.has(depth) {
		return ""
	}
	said := "It is bitten " + b.text(depth) + " so far, " + by
	switch target, more := b.figures["depth"], b.figures[left]; {
	case b.has("depth") && b.figures[depth].si >= target.si:
		return said + ": it is deep enough."
	case b.has(left) && more.si > 0:
		return said + ": leave it " + b.text(left) + " more."
	}
	return said + "."
}

// bitesSentence sums up bites with areas stopped out between them.
func (b *bench) bitesSentence() string {
	bites := b.reply.Bites
	if len(bites) == 0 || b.salt.salt == nil {
		return ""
	}
	return strconv.Itoa(len(bites)) + " bites take " + b.text("time") + " in all at " + b.text("density") + " in " + b.bathInWords() +
		", " + b.say("depth", b.wholeDepth().v) + " deep where none is stopped out."
}

// sheetSentence says what a depth alone leaves of the sheet and its finest line.
func (b *bench) sheetSentence() string {
	var said []string
	if left, ok := b.figures["left"]; ok && left.si > 0 {
		said = append(said, "A bite of "+b.say("depth", b.wholeDepth().v)+" leaves "+b.text("left")+" of the sheet.")
	}
	if left, ok := b.figures["lineLeft"]; ok && left.si > 0 {
		said = append(said, "The finest line keeps "+b.text("lineLeft")+".")
	} else if ok {
		said = append(said, "The finest line does not survive it.")
	}
	return strings.Join(said, " ")
}

func (b *bench) biteSentence() string {
	if !b.has("depth") || !b.has("time") || b.metal.state != field.Given || b.salt.salt == nil {
		return ""
	}
	time, into, flow := b.text("time"), " into "+b.metalInWords(), b.flow()
	depth, in := b.text("depth"), " in "+b.bathInWords()
	if flow == "" {
		return ""
	}
	switch b.firstFound() {
	case "time":
		return "Leave it " + time + " at " + flow + in + " to bite " + depth + into + "."
	case "depth":
		return field.Capital(time) + " at " + flow + in + " bites " + depth + into + "."
	case "current", "density":
		return "Set " + flow + in + " to bite " + depth + into + " in " + time + "."
	case "area":
		return field.Capital(time) + " at " + flow + in + " bites " + depth + " into " + b.text("area") + " of " + b.metalInWords() + b.onEach() + "."
	}
	return ""
}

func (b *bench) firstFound() string {
	if len(b.reply.Found) == 0 {
		return ""
	}
	return b.reply.Found[0]
}

// flow is the current to set, or the density where no area tells the current.
func (b *bench) flow() string {
	if b.has("current") {
		return b.text("current") + b.forAll()
	}
	if b.has("density") {
		return b.text("density")
	}
	return ""
}

func (b *bench) forAll() string {
	if n := b.amount("pieces"); n.known() && n.v > 1 {
		return " for all " + strconv.Itoa(int(n.v)) + " pieces"
	}
	return ""
}

func (b *bench) onEach() string {
	if n := b.amount("pieces"); n.known() && n.v > 1 {
		return " on each piece"
	}
	return ""
}

// metalInWords is the metal as it stands in the middle of a sentence: by the
// name that was typed, if it is one, else by the catalogue's.
func (b *bench) metalInWords() string {
	if r := b.metal.reading; r.Why != "name" {
		return lower(r.Metal.Name)
	}
	return b.fields.Value("metal").Text
}

// bathInWords is the bath by its salt, in whatever form that is weighed.
func (b *bench) bathInWords() string {
	switch b.salt.salt.Metal {
	case "Cu":
		return "copper sulfate"
	case "Ag":
		return "silver nitrate"
	}
	return "common salt"
}

func (b *bench) mixSentence() string {
	if !b.has("saltMass") || !b.has("waterMass") {
		return ""
	}
	return "Weigh " + b.text("saltMass") + " of " + b.salt.salt.Name + " and " + b.text("waterMass") + " of water for " +
		b.text("volume") + " of bath."
}

// lower makes the first letter small, unless a second capital or a figure says
// that it is a sign: "Cartridge brass", but "CuZn37".
func lower(name string) string {
	if len(name) > 1 && (name[1] < 'a' || name[1] > 'z') {
		return name
	}
	return strings.ToLower(name[:1]) + name[1:]
}
