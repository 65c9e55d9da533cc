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

	"depth": {Label: "Depth", Sought: true, Help: "print line 0.05 to 0.3 mm, relief 0.1 to 0.3 mm"},
	"density": {
		Label: "Current density", Sought: true, Fill: "30",
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

	"salt": {
		Label: "Salt", Help: "blank: the salt of the metal itself",
		Suggest: []string{"copper sulfate crystals", "anhydrous copper sulfate", "silver nitrate", "common salt"},
	},
	"strength":       {Label: "Strength", Help: "per litre of finished bath, or of water: mind the unit"},
	"volume":         {Label: "Volume", Help: "of finished bath, or type the vessel below"},
	"vesselLength":   {Label: "Vessel's length", Rare: true, Help: "inside"},
	"vesselWidth":    {Label: "Vessel's width", Rare: true, Help: "inside"},
	"vesselDiameter": {Label: "Vessel's diameter", Rare: true, Help: "of a round one, instead of length and width"},
	"fill":           {Label: "Filled to", Rare: true, Help: "height of the bath above the vessel's floor"},
	"assay":          {Label: "Salt's purity", Rare: true, Help: "shop crystals are 96 to 99 % pure"},
	"temperature":    {Label: "Bath is at", Rare: true, Help: "the temperature while it is mixed and used"},
	"coldest":        {Label: "Coldest kept at", Rare: true, Help: "what would crystallise out in a cold night"},
	"saltInHand":     {Label: "Salt in hand", Rare: true, Help: "to mix from what there is"},
	"waterInHand":    {Label: "Water in hand", Rare: true, Help: "with salt in hand, and no strength: finds the strength"},

	"units": {
		Label: "Units", Help: "what was typed keeps its own unit",
		Choices: map[string]string{"metric": "mm", "us": "in"},
	},
}
