package site

import (
	"path/filepath"

	"github.com/evanw/esbuild/pkg/api"

	"saltbite/calc/field"
	"saltbite/site/words"
)

// ClassFiles are what the page for a class loads beside what the first page has.
var ClassFiles = []string{"class.html", "class.css", classBundle.out}

var classBundle = bundle{entry: "site/page/class/class.js", out: "class.js", format: api.FormatIIFE}

// classPage is what the template of the page for a class is filled with.
type classPage struct {
	built
	ClassStyle, ClassScript loaded
	Beside, Rare            []control
	Columns                 []column
	Figures                 []figure
	Metals                  []string
}

// column is a column of the rows of pieces.
type column struct{ Name, Label, Help, Keys string }

// Fields that stand beside the rows, and those that fold away.
var (
	besideRows = []field.Name{field.Amps, field.Volts, field.Session, field.Supplies, field.Changeover, field.Start}
	rareBeside = []field.Name{field.DensityLimit, field.Strength, field.Volume, field.Gap, field.Cathode, field.Wire, field.WireLength, field.PriceSalt, field.PriceMetal, field.PriceHour}
)

// addClass makes the page for a class. as is what the first page says of the
// version; what is kept for use without internet is known later, and not named there.
func (s Files) addClass(root string, as built) error {
	var err error
	if s["class.css"], err = run(root, api.BuildOptions{EntryPoints: []string{filepath.Join(root, "site", "page", "class", "class.css")}}); err != nil {
		return err
	}
	s["class.html"], err = s.classHTML(root, as)
	return err
}

// classHTML is the page for a class, which loads the style and the script that the
// site has.
func (s Files) classHTML(root string, as built) ([]byte, error) {
	return fill(root, "class.html", classPage{built: as, ClassStyle: load(s["class.css"]), ClassScript: load(s[classBundle.out]),
		Beside: controls(besideRows), Rare: controls(rareBeside), Columns: classColumns(), Figures: classFigures, Metals: controlOf(*field.Metal.Row()).Suggest})
}

func controls(names []field.Name) (all []control) {
	for _, name := range names {
		all = append(all, controlOf(*name.Row()))
	}
	return all
}

// classColumns are those of a row. A size is typed as one text, and is no field.
func classColumns() []column {
	of := func(name field.Name, help string) column {
		c := controlOf(*name.Row())
		return column{c.Name, c.Label, help, "text"}
	}
	return []column{{"name", "Name", "", "text"}, of(field.Metal, ""), {"size", "Size", "60 x 40 mm, or area", "text"},
		of(field.Open, "%"), of(field.Depth, words.Unit(field.Depth.Row().Bare)), of(field.Pieces, "")}
}

// classFigures are the answers of a class with their labels.
var classFigures = []figure{
	{Name: "minutes", Label: "All of it takes"}, {Name: "readyAt", Label: "Ready at"}, {Name: "totalCurrent", Label: "Current, at most"},
	{Name: "loads", Label: "Loads"}, {Name: "rounds", Label: "Rounds"}, {Name: "deepestThatFits", Label: "Deepest that fits"},
	{Name: "cathodeNeeded", Label: "Cathode needed"}, {Name: "tankWidth", Label: "Pieces side by side"}, {Name: "cableNeeded", Label: "Cable, at least"},
	{Name: "cellVolts", Label: "Volts needed"}, {Name: "wireDrop", Label: "Volts lost in the cable"}, {Name: "wireLimit", Label: "Cable current, at most"},
	{Name: "removed", Label: "Metal dissolved"}, {Name: "saltMass", Label: "Salt for a new bath"}, {Name: "bathDrop", Label: "Bath weaker afterwards by"}, {Name: "saltToAdd", Label: "Salt to add afterwards"},
	{Name: "cost", Label: "Cost"},
}
