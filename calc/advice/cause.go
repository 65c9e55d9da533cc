package advice

import "saltbite/calc/field"

// Cause is a likely cause of what is seen of a piece, and what to do.
type Cause struct {
	Code   string
	Text   string // what went wrong
	Do     string
	Field  string // the field to change; "" for none
	Source string // what it rests on
}

// practice is what nearly all of this rests on.
const practice = "common practice"

// everyCause is every cause there is.
var everyCause = [...]Cause{
	{"density", "The current is too dense: gas and heat lift the resist and roughen the metal.", "Use less current for longer, or fewer pieces.", "density", practice},
	{"film", "A film of salt or oxide covers the metal.", "Use less current or a weaker bath, warm it, stir, and brush the film off.", "density", practice + "; Electrochim. Acta 41 (1996) 2417"},
	{"undercut", "The etch runs under the resist from both sides.", "Draw lines wider, or etch less deep.", "line", practice},
	{"resist", "The resist was thin, greyish, or on greasy metal.", "Clean the metal better and use a thicker resist in pure black.", "", practice},
	{"hidden", "Exposed edges, back or wire took part of the current.", "Cover them, or type them in.", "extra", practice},
	{"polarity", "The cables are swapped: the piece is plated.", "Work to the positive (red), cathode to the negative (black).", "after", "the weights typed in"},
	{"spent", "The bath has lost much of its metal.", "Add the salt that Used bath says, or mix a new bath.", "etched", practice},
	{"contact", "A clip or joint lost contact.", "Scrape the joint bright, keep it above the bath, and read the ammeter.", "readings", practice},
	{"short-time", "It was not on long enough.", "Leave it the time that the sentence says, and check half-way.", "time", practice},
	{"weak-current", "Less current flowed than was set.", "Read the ammeter during the run and type the readings.", "readings", practice},
	{"alloy", "The alloy itself dissolves unevenly or differently.", "Check the grade, and try a scrap.", "metal", practice},
	{"distance", "The cathode is too near, too small, or to one side.", "Put a cathode as large as the work straight before it, farther away.", "gap", practice},
	{"hanger", "The hanging wire was eaten.", "Use a thicker wire, or coat it down to the piece.", "hanger", practice},
	{"temperature", "The bath changed its temperature.", "Type its temperature; use more liquid or less current if it warms.", "temperature", practice},
	{"left-in", "It was left in the bath with the current off, and copper plated on it.", "Lift it out whenever the current is off; brush it clean.", "paused", practice},
	{"long-time", "It was on for too long.", "Set the clock, and check half-way.", "time", practice},
	{"area", "The exposed area is not what was typed.", "Measure it again; a smaller one etches deeper.", "area", practice},
}

// causesSeen are the causes of each thing that may be seen, the likeliest first
// where no figure speaks. Common practice, no source.
var causesSeen = [...]struct {
	seen  string
	codes []string
}{
	{"faint", []string{"hidden", "weak-current", "short-time", "spent", "film", "contact"}},
	{"deep", []string{"area", "alloy", "distance", "long-time"}},
	{"lifted", []string{"density", "resist", "undercut", "temperature"}},
	{"fuzzy", []string{"undercut", "resist", "density", "alloy"}},
	{"rough", []string{"film", "density", "alloy"}},
	{"pink", []string{"left-in", "contact", "polarity"}},
	{"black", []string{"film", "alloy", "density"}},
	{"uneven", []string{"distance", "film", "resist", "hidden"}},
	{"falling", []string{"film", "contact", "hanger", "spent", "temperature"}},
	{"nothing", []string{"polarity", "contact", "resist", "short-time", "weak-current"}},
	{"wire", []string{"hanger", "hidden", "density"}},
}

// causes lists the likely causes of what is seen: first those that this job's
// own figures show, by how many times each is past its limit, then the others in
// their order, then those that a figure speaks against.
func (v *view) causes() (list []Cause) {
	seen := v.Fields.Pick(field.Seen)
	var weights []float64 // of the list, falling
	for _, row := range causesSeen {
		if row.seen != seen {
			continue
		}
		for _, code := range row.codes {
			times := v.shown(seen, code)
			if times > 0 && times < 1 {
				times = 0
			}
			weights, list = append(weights, times), append(list, causeOf(code))
			for at := len(list) - 1; at > 0 && weights[at-1] < weights[at]; at-- {
				weights[at-1], weights[at] = weights[at], weights[at-1]
				list[at-1], list[at] = list[at], list[at-1]
			}
		}
	}
	return list
}

func causeOf(code string) Cause {
	for _, c := range everyCause {
		if c.Code == code {
			return c
		}
	}
	panic("advice: no cause " + code)
}

// certain is a cause that leaves no doubt, and against one that a figure speaks
// against.
const certain, against = 1e9, -1

// Where a figure shows a cause; common practice, no source.
const (
	forgottenShare = 0.1       // less depth for what was left out
	spentShare     = 0.2       // of the bath's metal gone
	shortCharge    = 0.9       // of the charge that the depth takes
	thinLine       = 0.5       // undercut on both sides over the line
	fastWarming    = 5. / 3600 // K/s
	coldBath       = 288.15    // K, 15 C
	nearSaturation = 0.8
)

// shown is how many times past its limit the figure is that shows a cause: 0
// where none speaks.
func (v *view) shown(seen, code string) float64 {
	b := v.Bite
	switch code {
	case "density":
		return b.Density.SI / denseNote
	case "film":
		return v.filmShown(seen)
	case "undercut":
		if line := v.Fields.Amount(field.Line); line.Known() && v.Lines.Narrowest.Known() {
			return v.Lines.Narrowest.SI / line.SI / thinLine
		}
	case "hidden":
		return v.hiddenShown()
	case "polarity":
		if v.Course.Heavier {
			return certain
		}
	case "spent":
		return v.spentShown(seen)
	case "contact":
		if n := len(b.Read); n > 0 && b.Read[n-1].Current == 0 {
			return certain
		}
	case "weak-current", "short-time":
		return v.chargeShown(seen, code)
	case "alloy":
		return v.alloyShown(seen)
	case "distance":
		return v.distanceShown()
	case "hanger":
		return v.hangerShown()
	case "temperature":
		return v.temperatureShown(seen)
	case "left-in":
		if v.Fields.Given(field.Paused) {
			return 1
		}
		return v.Metal.Share("Zn") / turnsPink
	case "area":
		return v.Course.EfficiencyNow.SI / oddlyHigh
	}
	return 0
}

func (v *view) filmShown(seen string) float64 {
	var times float64
	if film := v.Limits.Film; film.Known() && v.Bite.Density.Known() {
		times = v.Bite.Density.SI / film.SI
		if seen == "rough" {
			times *= 2
		}
	}
	switch {
	case seen == "rough" && times < 1 && v.Fields.Pick(field.Stir) == "stirred":
		return against
	case seen == "rough" && v.figures[field.AnswerSaturation].SI > nearSaturation:
		return max(times, v.figures[field.AnswerSaturation].SI/nearSaturation)
	case seen == "rough" && v.cold():
		return max(times, 1)
	case seen == "black" && v.Course.EfficiencyNow.Known():
		return max(times, oddlyLow/v.Course.EfficiencyNow.SI)
	case seen == "uneven" && v.Limits.Still:
		return max(times, 1)
	}
	return times
}

// temperatureShown counts a cold bath where the current falls: one that warms
// conducts better.
func (v *view) temperatureShown(seen string) float64 {
	switch {
	case seen != "falling":
		return v.Circuit.Warming.SI / fastWarming
	case v.cold():
		return 1
	}
	return 0
}

// cold says whether a cold bath was typed.
func (v *view) cold() bool {
	return v.Fields.Given(field.Temperature) && v.Fields.Amount(field.Temperature).SI < coldBath
}

func (v *view) hiddenShown() float64 {
	if forgotten := v.Effects.DepthIfForgotten; forgotten.Known() && v.Bite.Depth.SI > 0 {
		return (1 - forgotten.SI/v.Bite.Depth.SI) / forgottenShare
	}
	if v.Fields.Given(field.Hanger) && v.Fields.Blank(field.HangerLength) && v.Fields.Blank(field.Extra) {
		return 1
	}
	return 0
}

// spentShown counts at fixed volts only: a held current etches as deep in a weak
// bath.
func (v *view) spentShown(seen string) float64 {
	if seen == "faint" && (v.Fields.Given(field.Current) || v.Fields.Given(field.Density)) {
		return against
	}
	return v.Used.DropAll.SI / spentShare
}

// chargeShown holds the charge so far against what the depth takes, and, where
// nothing is seen, the loss that can be expected against the balance.
func (v *view) chargeShown(seen, code string) float64 {
	b, charge := v.Bite, v.Bite.ChargeSoFar()
	if !v.Law.Known || !b.Depth.Known() || !b.Area.Known() || !charge.Known() || charge.SI <= 0 {
		return 0
	}
	if seen == "nothing" {
		loss := v.Law.Removed(charge.SI).SI / b.Work.Pieces
		if code == "short-time" && loss > 0 {
			return v.Course.Telling.SI / loss
		}
		return 0
	}
	if code == "weak-current" && b.Read != nil {
		return shortCharge * v.Law.Charge(b.Piece(), b.Depth.SI).SI / charge.SI
	}
	return 0
}

func (v *view) alloyShown(seen string) float64 {
	var list raised
	v.warnOfPhases(&list)
	switch {
	case seen == "deep" && v.Salt.Common():
		return 1
	case seen == "black" && (v.Metal.Share("Sn") > traces || v.Metal.Share("Pb") > traces || v.Metal.Given() && v.Metal.Reading.Metal.Slimes() && v.Salt.Holds("Cu")):
		return 1
	case seen == "rough" && (len(list) > 0 || v.Metal.Share("Pb") > traces):
		return 1
	}
	return 0
}

// distanceShown holds the gap against half the face and the cathode against it.
func (v *view) distanceShown() (times float64) {
	if gap, length := v.Fields.Amount(field.Gap), v.Face.Length(); gap.Known() && length.Known() {
		times = length.SI / 2 / gap.SI
	}
	if cathode := v.Fields.Amount(field.Cathode); cathode.Known() && v.Face.Area.Known() && v.Bite.Count.Known() {
		times = max(times, v.Face.Area.SI*v.Bite.Count.SI/cathode.SI)
	}
	return times
}

func (v *view) hangerShown() float64 {
	wire, left := v.Fields.Amount(field.Hanger), v.Effects.HangerLeft
	switch {
	case v.Hidden.Wire == "aluminium" && v.Salt.Holds("Cu"):
		return against
	case wire.Known() && left.Known() && left.SI <= 0:
		return certain
	case wire.Known() && left.Known():
		return wire.SI / 2 / left.SI
	}
	return 0
}
