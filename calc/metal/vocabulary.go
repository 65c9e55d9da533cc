package metal

import "strings"

// set is a list of words, apart by blanks, as a set.
func set(list string) map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(list) {
		m[w] = true
	}
	return m
}

// joints join the words of a name and mean nothing themselves.
var joints = set(`of the a an for percent pct prozent
	de du des d la le les l el los en pour para por aux au al a
	di da del della dello dei per il lo all alla allo dal
	aus fur von der die das mit zum`)

// shapes say what form a metal comes in or what is to be done with it, not which
// metal it is.
var shapes = set(`sheet sheets plate plates wire wires foil strip strips bar bars rod rods tube tubing disc discs disk
	disks blank blanks stock coil ribbon flat round square piece pieces scrap offcut offcuts alloy metal cuff bangle
	half hard soft annealed rolled cold bright polished thin thick fired sintered solid
	etching etch etched etchable engraving jewelry jewellery jeweler jewelers craft intaglio printmaking
	grade type uns en din bs cda astm sae iso ga gauge gage swg awg mm cm inch inches
	blech bleche platte platten draht folie band stab stange rohr tafel scheibe zum atzen geatzt weich
	halbhart hart gegluht gebrannt legierung metall
	tole plaque plaques feuille fil bande barre tube disque planche recuit ecroui demi dur graver gravure alliage cuit
	chapa chapas lamina laminas plancha planchas hilo alambre varilla barra tubo disco recocido duro grabar
	aleacion cocido
	lastra lastre lamiera lamierino foglio filo barra tubo disco ricotto crudo incisione incidere lega cotto`)

// sizes are units after a number that says how thick a sheet is.
var sizes = set(`ga gauge gage swg awg mm cm in inch inches um mil mils thou micron microns`)

// tails are what German joins to a metal's name for its form.
var tails = []string{"blech", "bleche", "platte", "platten", "draht", "folie", "band", "stab", "rohr", "tafel", "scheibe", "ronde", "legierung"}

// lookAlikes are words a letter away from a metal's name, or from a word of
// one, that mean something else: they are never taken for a slip of the pen.
var lookAlikes = set(`brash brassy brasses bass brads brats brans brays brags braes brasa brasso brasse brassard grass crass
	copier copiers copter copped coppery copperas cropper chopper clopper cupper capper cope copes proper cover
	bronzed bronzer bronzers bronzing bronte bonze brownie
	salver solver silvery silvern silverer silvers saver slaver siler selver silvia silva salve
	missing massing messing-about passing kissing blessing dressing selber silben silbern siller
	ardent argents argentin argentine argentina argentino agent urgent
	similar similaire simile simila starling starlings sterile string tobacco tomcat combat wombat
	alpacas alpaga standards stander standart comment commerce commercials commerical
	engraver engravers engrave yell yellows fellow mellow pellow cottone cotone bottone ottoman ottomane
	kufer kuffer koffer kuper kupfern cuivres cuivrer cuivree
	nicked nickels pickle tickle fickle nicole nichols
	zincbronze zinkbronze goldbronze
	coinage coined joining turnin turbine burning
	phosphoric phosphate phosphors nordics metallic metals metaled mental petal medal pedal
	germany germanic germinal britain britannica
	sculptor sculptures statue statues station
	springs spring sprint string strings leader leaders loaded leased headed leaden
	platina platine platino silikon silicone silicones aluminate naval navel navals cannon canon common`)
