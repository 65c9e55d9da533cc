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
var joints = set(`the a an for percent pct prozent
	de du des d la le les l el los en pour para por aux au al a
	di da del della dello dei per il lo all alla allo dal
	aus fur von der die das mit zum`)

// shapes say what form a metal comes in or what is to be done with it, not which
// metal it is.
var shapes = set(`sheet sheets plate plates wire wires foil strip strips bar bars rod rods tube tubing disc discs disk
	disks blank blanks stock coil ribbon flat round square piece pieces scrap offcut offcuts alloy metal cuff bangle
	half hard soft dead annealed shim old used leftover rolled cold bright polished thin thick fired sintered solid
	etching etch etched etchable engraving jewelry jewellery jeweler jewelers craft intaglio printmaking
	of grade type uns en din bs cda astm sae iso ga gauge gage swg awg mm cm inch inches
	blech bleche platte platten draht folie stab stange rohr tafel scheibe zum atzen geatzt weich
	druckplatte radierung halbhart hart gegluht gebrannt legierung metall
	tole plaque plaques feuille fil bande barre tube disque planche recuit ecroui demi dur graver gravure alliage cuit
	chapa chapas grabado lamina laminas plancha planchas hilo alambre varilla barra tubo disco recocido duro grabar
	aleacion cocido
	lastra lastre lamiera lamierino foglio filo barra tubo disco ricotto crudo incisione incidere lega cotto`)

// sizes are units after a number that says how thick a sheet is.
var sizes = set(`ga g gauge gage swg awg mm cm in inch inches um mil mils thou micron microns`)

// tails are what German joins to a metal's name for its form.
var tails = []string{"blech", "bleche", "platte", "platten", "draht", "folie", "band", "stab", "rohr", "tafel", "scheibe", "ronde", "legierung"}

// lookAlikes are words a letter or two away from a metal's name, or from a word
// of one, that mean something else: they are never taken for a slip of the pen.
// Found by asking for all words of the word lists of Debian (wamerican, wngerman,
// wfrench, wspanish, witalian); "cooper", "sliver" and "bras" are left out, since
// here they mostly are slips.
var lookAlikes = set(`
	aliaca almento armento arment arpent arpentons arrentons ardent urgent agent alpacas alpaga
	argenta argentage argentai argentant argentar argentas argentat argente argentent argenteo argenteur
	argentin argentina argentine argentines argentino argentins argentions argentite argentons argentosa
	argentoso argents argenture argert arguent argument sargento sargentona
	bass baston blass boas brads brags braes brais brans brasa brasas brase brases brash brasse brassa brassard
	brasses brasso brassy brats brays bias crass grass
	bonze bronca bronche bronches bronci bronco broncos bronte bronza bronzed bronzer bronzers bronzez bronzing
	brownie rozno brozno breeze
	capper chopper cope copes copier copiers copped copperas coppery copter copters couper cover cowper cropper cupper
	proper cuivra cuivrer cuivrez cuivrees goldbronze zincbronze zinkbronze
	gelding girding gliding golding guiding
	koffer kufer kuffer kuper kupfern iaton lawton layton bottone cotone cottone ottoman ottomane
	blessing dressing kissing massing meshing messina messine messung missing mussing passing
	platalea versilber
	saver selben selber silben selver salve salver silbar silbern silbernen silva silves silvered silverer silvern
	silvers silvery silvia siller slaver solver gilberto
	similaire similar simile sperling starling starlings stealing steeling sterile sterlina sterline string
	combat tobacco tombai tombal tombas tombat tomcat wombat laston liaton ragent packfung`)
