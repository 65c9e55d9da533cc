package words

// Fields are the words of each field, by its name.
var Fields = map[string]Field{
	"metal": {
		Label: "Name or grade",
		Help:  "or what it is made of, such as Cu 70 Zn 30",
	},
	"metalDensity": {
		Label: "Metal's density", Rare: true,
		Help: "instead of the catalogue's; fired clay is porous",
	},

	"width":    {Label: "Width", Help: "of the face of one piece"},
	"height":   {Label: "Height"},
	"diameter": {Label: "Diameter", Rare: true, Help: "of a round piece, instead of width and height"},
	"open":     {Label: "Bare share", Help: "how much of that face is bare metal"},
	"area":     {Label: "Open area", Sought: true, Help: "of one piece, instead of size and share"},
	"sides":    {Label: "Sides", Rare: true, Help: "1, or 2 if the back is etched as well"},
	"pieces":   {Label: "Pieces", Help: "equal ones, side by side on one supply"},
	"edge": {
		Label: "Resist edge", Rare: true,
		Help: "length of the edge round the open areas of one piece",
	},
	"extra": {
		Label: "Extra bare metal", Rare: true,
		Help: "sheet edges, back and hanger under the surface take current too",
	},

	"hanger":       {Label: "Hanger wire", Rare: true, Help: "its gauge or diameter: what hangs wet takes current"},
	"hangerLength": {Label: "Wet hanger length", Rare: true, Help: "of the wire, under the surface"},
	"hangerMetal": {
		Label: "Hanger's metal", Rare: true, Help: "never stainless, plated or galvanised",
		Choices: map[string]string{"copper": "copper", "brass": "brass", "bronze": "bronze", "silver": "silver", "aluminium": "aluminium",
			"stainless": "stainless", "plated": "plated", "galvanised": "galvanised"},
	},
	"bareEdges": {Label: "Bare sheet edge", Rare: true, Help: "its length; the sheet's thickness is typed below"},
	"back":      {Label: "Bare back", Rare: true, Help: "share of the back that no resist covers"},

	"depth": {
		Label: "Depth", Sought: true,
		Help: "print line 0.05 to 0.3 mm, relief 0.1 to 0.3 mm", HelpUS: "print line 0.002 to 0.012 in, relief 0.004 to 0.012 in",
	},
	"density": {
		Label: "Current density", Sought: true, Fill: "30", Suggested: "suggestedDensity",
		Help: "10 to 50 mA/cm² is ordinary",
	},
	"current": {Label: "Current", Sought: true, Help: "of all pieces together, instead of the density"},
	"time":    {Label: "Time", Sought: true, Help: "such as 2 h 30 or 1:40"},
	"find": {
		Label: "Sought", Help: "which of the four is found from the others",
		Choices: map[string]string{"depth": "depth", "time": "time", "current": "current", "area": "open area"},
	},
	"efficiency": {
		Label: "Current efficiency", Rare: true,
		Help: "the share of the current that dissolves metal",
	},
	"undercut": {
		Label: "Undercut", Rare: true,
		Help: "side bite over depth: 0.5 to start with, 1 at the worst",
	},

	"bites": {
		Label: "Bites", Rare: true,
		Help: "stopping out: depth and open area of each, as 0.05 12; 0.10 9",
	},

	"sheet": {Label: "Thickness", Help: "a size, or a gauge such as 18 ga"},
	"keep":  {Label: "Least to keep", Help: "a share or a thickness; 50 % unless typed"},
	"line":  {Label: "Narrowest line", Help: "of resist, which stays as the finest raised line"},
	"space": {Label: "Narrowest space", Help: "between two strips of resist"},

	"volts": {Label: "Supply's volts", Help: "an isolated low-voltage supply only"},
	"amps":  {Label: "Supply's amperes", Help: "the most that it gives"},
	"gap": {
		Label: "Gap",
		Help:  "from the work to the cathode; 60 to 100 mm in a tank", HelpUS: "from the work to the cathode; 2.5 to 4 in in a tank",
	},
	"cathode": {Label: "Cathode", Help: "its area that faces the work; as large as the open area or more"},
	"position": {
		Label: "Work is", Rare: true, Help: "how it is placed in the bath",
		Choices: map[string]string{"hanging": "hanging", "face-down": "face down", "face-up": "face up"},
	},
	"stir": {
		Label: "Bath is", Rare: true, Help: "stirred raises the limits and evens the bite",
		Choices: map[string]string{"still": "still", "stirred": "stirred"},
	},
	"wire":       {Label: "Lead's wire", Rare: true, Help: "its gauge or diameter"},
	"wireLength": {Label: "Lead's length", Rare: true, Help: "there and back"},
	"wireMetal": {
		Label: "Lead's metal", Rare: true, Help: "of the wire from the supply",
		Choices: map[string]string{"copper": "copper", "aluminium": "aluminium"},
	},

	"salt": {
		Label: "Salt", Help: "blank: the salt of the metal itself",
		Suggest: []string{"copper sulfate crystals", "anhydrous copper sulfate", "silver nitrate", "common salt"},
	},
	"strength": {
		Label: "Strength", Suggested: "suggestedStrength",
		Help: "usual: copper sulfate 100 to 250, silver nitrate 20 to 60 g/L",
	},
	"volume":         {Label: "Volume", Help: "of finished bath, or type the vessel below"},
	"vesselLength":   {Label: "Vessel's length", Rare: true, Help: "inside"},
	"vesselWidth":    {Label: "Vessel's width", Rare: true, Help: "inside"},
	"vesselDiameter": {Label: "Vessel's diameter", Rare: true, Help: "of a round one, instead of length and width"},
	"fill":           {Label: "Filled to", Rare: true, Help: "height of the bath above the vessel's floor"},
	"assay":          {Label: "Salt's purity", Rare: true, Help: "shop crystals are 96 to 99 % pure"},
	"temperature":    {Label: "Bath is at", Rare: true, Help: "the temperature while it is mixed and used"},
	"coldest":        {Label: "Coldest kept at", Rare: true, Help: "what would crystallise out in a cold night"},
	"mixed":          {Label: "Mixed on", Rare: true, Help: "printed as it is typed on the jar's label"},
	"saltInHand":     {Label: "Salt in hand", Rare: true, Help: "to mix from what there is"},
	"waterInHand":    {Label: "Water in hand", Rare: true, Help: "with salt in hand, and no strength: finds the strength"},

	"etched":       {Label: "Etched so far", Help: "of this metal, in this bath, before this run"},
	"volumeNow":    {Label: "Level shows", Help: "the volume after evaporation"},
	"haveStrength": {Label: "Strength there is", Rare: true, Help: "of a bath to strengthen or weaken"},
	"haveVolume":   {Label: "Volume there is", Rare: true, Help: "of that bath"},
	"wantStrength": {Label: "Strength wanted", Rare: true, Help: "of that bath, or of a blend of two"},
	"strengthA":    {Label: "Blend: one bath", Rare: true, Help: "its strength"},
	"strengthB":    {Label: "Blend: the other", Rare: true, Help: "its strength; the volume in all stands under Bath"},
	"gravity":      {Label: "Hydrometer", Rare: true, Help: "reading 20/20 °C, or g/mL, or °Bé; zinc misleads it"},

	"before":   {Label: "Weight before", Help: "of one piece with its resist, off the hanger, dry"},
	"after":    {Label: "Weight after", Help: "the same, rinsed and dried; time is then the time so far"},
	"readings": {Label: "Ammeter", Help: "time and amperes, such as 0:00 0.30; 0:30 0.28; 1:00 0.27"},
	"start":    {Label: "Switched on at", Help: "by the clock, such as 14:05"},
	"paused":   {Label: "Off meanwhile", Rare: true, Help: "how long the current was off since"},

	"units": {
		Label: "Units", Help: "what was typed keeps its own unit",
		Choices: map[string]string{"metric": "mm", "us": "in"},
	},
}
