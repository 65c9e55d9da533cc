package words

var yesNo = map[string]string{"yes": "yes", "no": "no"}

// Fields are the words of each field, by its name.
var Fields = map[string]Field{
	"metal": {
		Label: "Metal",
		Help:  "name, grade, or what it's made of: Cu 70 Zn 30",
	},
	"metalDensity": {
		Label: "Density of the metal", Rare: true,
		Help: "instead of the book's; fired clay is porous",
	},

	"width":    {Label: "Width", Help: "of one piece"},
	"height":   {Label: "Height", Help: "of one piece"},
	"diameter": {Label: "Diameter", Help: "of a round piece instead"},
	"open":     {Label: "Exposed share", Makes: []string{"totalArea"}, Help: "of the face, not covered by resist"},
	"area":     {Label: "Exposed area", Makes: []string{"totalArea"}, Sought: true, Help: "of one piece, instead of size and share"},
	"sides":    {Label: "Sides etched", Rare: true, Help: "1 or 2"},
	"pieces":   {Label: "Pieces", Makes: []string{"totalArea", "removedEach"}, Help: "identical, etched together"},
	"edge":     {Label: "Resist outline", Rare: true, Help: "total length of all resist edges on one piece"},
	"extra":    {Label: "Other exposed metal", Makes: []string{"totalArea"}, Rare: true, Help: "edges, back, wire under the surface"},

	"hanger":       {Label: "Hanging wire", Rare: true, Help: "gauge or diameter"},
	"hangerLength": {Label: "Wire in the bath", Makes: []string{"extraFound", "hangerLeft"}, Rare: true, Help: "length under the surface"},
	"hangerMetal": {
		Label: "Wire's metal", Rare: true, Help: "if blank, copper, or silver for silver; never stainless",
		Choices: map[string]string{"copper": "copper", "brass": "brass", "bronze": "bronze", "silver": "silver", "aluminium": "aluminium",
			"stainless": "stainless", "plated": "plated", "galvanised": "galvanised"},
	},
	"bareEdges": {Label: "Exposed edges", Makes: []string{"extraFound"}, Rare: true, Help: "their length; type the sheet's thickness below"},
	"back":      {Label: "Exposed back", Makes: []string{"extraFound"}, Rare: true, Help: "share of the back without resist"},

	"depth": {
		Label: "Depth", Sought: true,
		Help: "print line 0.05 to 0.3 mm, relief 0.1 to 0.3 mm", HelpUS: "print line 0.002 to 0.012 in, relief 0.004 to 0.012 in",
	},
	"density": {
		Label: "Current density", Sought: true, Fill: "30", Suggested: "suggestedDensity",
		Help: "10 to 50 mA/cm² is usual",
	},
	"current": {Label: "Current", Sought: true, Help: "for all pieces together"},
	"time":    {Label: "Time", Sought: true, Help: "such as 2 h 30 or 1:40"},
	"find": {
		Label: "Find", Help: "the one of the four to work out",
		Choices: map[string]string{"depth": "depth", "time": "time", "current": "current", "area": "exposed area"},
	},
	"efficiency":     {Label: "Current efficiency", Rare: true, Help: "share of the current that dissolves metal"},
	"efficiencyLow":  {Label: "This bench, at least", Rare: true, Help: "least efficiency of its own runs"},
	"efficiencyHigh": {Label: "This bench, at most", Rare: true, Help: "most efficiency of its own runs"},
	"undercut":       {Label: "Undercut ratio", Rare: true, Help: "sideways over depth: 0.5 to start, 1 at worst"},

	"bites": {
		Label: "Stopping out", Rare: true,
		Help: "each step's own depth (they add up) and area: 0.05 12; 0.10 9",
	},

	"sheet": {Label: "Sheet thickness", Makes: []string{"left", "leftShare"}, Help: "a size, or a gauge such as 18 ga"},
	"keep":  {Label: "Leave at least", Makes: []string{"deepest", "thinnestGauge"}, Help: "a share or a thickness; 50 % if blank"},
	"line":  {Label: "Finest line", Makes: []string{"lineLeft", "deepestForLine"}, Help: "of resist; it stays raised"},
	"space": {Label: "Finest gap", Makes: []string{"spaceBecomes"}, Help: "between two lines of resist"},

	"volts": {Label: "Supply voltage", Makes: []string{"currentAtVolts", "ballast"}, Help: "isolated and low-voltage only"},
	"amps":  {Label: "Supply current, at most", Makes: []string{"timeThatFits", "piecesThatFit"}, Help: "what its label says, or its limit"},
	"gap": {
		Label: "Distance to the cathode", Makes: []string{"bathResistance", "cellVolts"},
		Help: "60 to 100 mm in a tank", HelpUS: "2.5 to 4 in in a tank",
	},
	"cathode": {Label: "Cathode area", Makes: []string{"cathodeDensity", "cathodeLimit"}, Help: "facing the work, at least the exposed area"},
	"position": {
		Label: "Work hangs", Rare: true, Help: "how it is placed in the bath",
		Choices: map[string]string{"hanging": "hanging", "face-down": "face down", "face-up": "face up"},
	},
	"stir": {
		Label: "Stirring", Rare: true, Help: "raises the limits and evens the etch",
		Choices: map[string]string{"still": "still", "stirred": "stirred"},
	},
	"wire":       {Label: "Cable wire", Rare: true, Help: "gauge or diameter"},
	"wireLength": {Label: "Cable length", Makes: []string{"wireDrop", "wireLimit"}, Rare: true, Help: "there and back"},
	"wireMetal": {
		Label: "Cable metal", Rare: true, Help: "of the wire from the supply",
		Choices: map[string]string{"copper": "copper", "aluminium": "aluminium"},
	},

	"salt": {
		Label: "Salt", Help: "if blank, the one that goes with the metal",
		Suggest: []string{"copper sulfate crystals", "anhydrous copper sulfate", "silver nitrate", "common salt"},
	},
	"strength": {
		Label: "Strength", Makes: []string{"saturation"}, Suggested: "suggestedStrength",
		Help: "usual: copper sulfate 100 to 250, silver nitrate 20 to 60 g/L",
	},
	"volume":         {Label: "Volume", Makes: []string{"saltMass", "waterVolume"}, Help: "of the finished bath, or type the tank below"},
	"vesselLength":   {Label: "Tank length", Rare: true, Help: "inside"},
	"vesselWidth":    {Label: "Tank width", Rare: true, Help: "inside"},
	"vesselDiameter": {Label: "Tank diameter", Rare: true, Help: "inside, of a round one"},
	"fill":           {Label: "Liquid depth", Makes: []string{"volume"}, Rare: true, Help: "from the tank's floor to the surface"},
	"assay":          {Label: "Purity of the salt", Rare: true, Help: "shop crystals are 96 to 99 % pure"},
	"temperature":    {Label: "Bath temperature", Rare: true, Help: "while it is mixed and used"},
	"coldest":        {Label: "Coldest storage", Makes: []string{"crystals", "saturatesAt"}, Rare: true, Help: "crystals may drop in a cold night"},
	"mixed":          {Label: "Mixed on", Rare: true, Help: "for the jar's label"},
	"saltInHand":     {Label: "Salt I have", Makes: []string{"waterVolume", "volume"}, Rare: true, Help: "to mix a bath from it"},
	"waterInHand":    {Label: "Water I have", Makes: []string{"saltMass", "volume"}, Rare: true, Help: "by weight or by volume"},

	"etched":       {Label: "Metal etched in it so far", Makes: []string{"bathDropAll", "saltToAddAll"}, Help: "of this metal, since it was mixed or topped up"},
	"volumeNow":    {Label: "Volume now", Makes: []string{"waterToAdd", "strengthNow"}, Help: "after evaporation"},
	"haveStrength": {Label: "Its strength", Rare: true, Help: "of a bath to strengthen or weaken"},
	"haveVolume":   {Label: "Its volume", Rare: true, Help: "of that bath"},
	"wantStrength": {Label: "Strength I want", Makes: []string{"addSalt", "addWater"}, Rare: true, Help: "of that bath, or of a blend"},
	"strengthA":    {Label: "Bath A", Rare: true, Help: "its strength, to blend"},
	"strengthB":    {Label: "Bath B", Makes: []string{"partA", "partB"}, Rare: true, Help: "its strength; type the volume in all under Bath"},
	"gravity":      {Label: "Hydrometer reading", Makes: []string{"strengthByGravity"}, Rare: true, Help: "20/20 °C, or g/mL, or °Bé; zinc misleads it"},

	"before":     {Label: "Weight before", Makes: []string{"weightAtTarget"}, Help: "one piece, dry, with its resist, off the wire"},
	"after":      {Label: "Weight now", Makes: []string{"depthNow", "efficiencyNow"}, Help: "the same piece, rinsed and dry"},
	"elapsed":    {Label: "On for", Makes: []string{"timeLeft"}, Help: "how long the current has been on"},
	"resolution": {Label: "Balance reads to", Rare: true, Help: "its smallest step; 0.01 g if blank"},
	"readings":   {Label: "Ammeter readings", Makes: []string{"depthSoFar", "readyIn"}, Help: "time and amperes: 0:00 0.30; 0:30 0.28"},
	"start":      {Label: "Switched on at", Makes: []string{"halfAt", "readyAt"}, Help: "by the clock, such as 14:05"},
	"paused":     {Label: "Time paused", Rare: true, Help: "how long the current was off since"},

	"seen": {
		Label: "What do you see?", Help: "the likely causes follow from this job's figures",
		Choices: map[string]string{"faint": "too faint", "deep": "too deep", "lifted": "resist lifted", "fuzzy": "fuzzy edges", "rough": "rough",
			"pink": "pink", "black": "black", "uneven": "one side deeper", "falling": "current falls", "nothing": "nothing happens", "wire": "wire eaten"},
	},

	"black": {
		Label: "Black is", Help: "resist, or etched", Choices: map[string]string{"keeps": "resist", "etches": "etched"},
	},
	"mirror":      {Label: "Mirror", Help: "text transferred face down is mirrored", Choices: yesNo},
	"threshold":   {Label: "Darkness that counts", Help: "the share of white above which it is exposed"},
	"corners":     {Label: "Corners of the sheet", Help: "in pixels, clockwise from the top left"},
	"ruler":       {Label: "Ends of the ruler", Help: "in pixels; it gives the scale if width and height are blank"},
	"rulerLength": {Label: "Length of the ruler", Help: "between the two ends"},
	"along":       {Label: "Ends of the cut", Help: "in thousandths of the picture's width and height"},
	"dpi":         {Label: "Dots per inch", Help: "of the printer"},
	"copies":      {Label: "Copies", Help: "on the sheet"},
	"paper":       {Label: "Paper", Help: "if blank, the art alone", Choices: map[string]string{"A4": "A4", "letter": "letter"}},
	"islands":     {Label: "Exposed islands", Help: "from the picture"},
	"holes":       {Label: "Spots of resist", Help: "from the picture"},
	"least":       {Label: "Shallowest part", Help: "from the picture, over the mean"},
	"resistance":  {Label: "Bath resistance", Help: "from the picture"},
	"until": {
		Label: "Deep enough when", Help: "the mean or the shallowest part is there",
		Choices: map[string]string{"mean": "the mean is", "least": "the shallowest part is"},
	},

	"depthFound": {Label: "Depth measured", Help: "on the finished piece"},
	"lineFound":  {Label: "Line measured", Help: "on the finished piece"},
	"spaceFound": {Label: "Gap measured", Help: "on the finished piece"},
	"use":        {Label: "Counts", Help: "no leaves this run out", Choices: yesNo},

	"densityLimit": {Label: "Densest allowed", Help: "current density of every load"},
	"session":      {Label: "Time we have", Help: "for the whole class"},
	"changeover":   {Label: "Between rounds", Help: "10 min if blank"},
	"supplies":     {Label: "Supplies", Help: "identical ones"},
	"priceSalt":    {Label: "Salt per kg", Help: "in any money"},
	"priceMetal":   {Label: "Metal per kg", Help: "in the same money"},
	"priceHour":    {Label: "An hour", Help: "in the same money"},

	"ask": {
		Label: "The question", Help: "what the sentence answers first",
		Choices: map[string]string{"time": "How long?", "supply": "Will my supply do?", "bath": "Mix or top up a bath", "check": "Check half-way"},
	},
	"units": {
		Label: "Units", Help: "what was typed keeps its own unit",
		Choices: map[string]string{"metric": "mm", "us": "in"},
	},
}
