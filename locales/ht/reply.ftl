# What matone says in Haitian Creole. Machine-drafted.
#
# The program hands over every figure, already written out; no message may hold a figure of its
# own. Keep to the GSM 7-bit alphabet: è, ò and à are in it, their capitals are not.
# Creole nouns have no plural form, so no message needs a selector.

## Names

product-bleach = javèl
product-bleaching_powder = lacho klore
product-calcium_hypochlorite = ipoklorit kalsyòm
product-chlorine_dioxide = dyoksid klò
product-iodine_tablet = tablèt yòd
product-iodine_tincture = tenti yòd
product-nadcc = tablèt klò
product-povidone_iodine = povidòn yòd

method-fire = bouyi dlo a
method-filter = yon filt
method-sunlight = solèy nan boutèy klè

product-any = klò

clarity-clear = { " " }klè
clarity-cloudy = { " " }twoub
# Said where the answer has no room for cloudy water and takes the water for clear.
clarity-assumed = { " " }si l klè
warmth-cold = { " " }frèt
warmth-celsius = { " " }a { $celsius } C

## Measures

volume-litres = { $value } L
volume-us-gallons = { $value } galon US
volume-us-quarts = { $value } qt US
volume-imperial-gallons = { $value } galon imp
label-percent = { " " }{ $value }%
label-mg = { " " }{ $value } mg

drops = { $drops } gout
measure-drops = { $drops } ({ $ml } mL)
measure-ml = { $ml } mL
measure-ml-teaspoon = { $ml } mL ({ $spoons } ti kiyè)
measure-ml-tablespoon = { $ml } mL ({ $spoons } gwo kiyè)
measure-later = Sa fè { $measure }.
tablets = { $count } tablèt
grams = { $grams } g
kilograms = { $kilograms } kg
metres = { $metres } m
minutes = { $value } min
hours = { $value } èdtan
days = { $value } jou
days-n = { $value } jou

## A dose

echo = { $volume }{ $clarity }{ $warmth }, { $product }{ $label }
echo-remembered = { $volume }{ $clarity }{ $warmth }, { $product } ou a{ $label }
head-liquid = { $echo }: mete { $measure }, brase, tann { $wait }.
head-liquid-cloudy = { $echo }: kite l poze, koule l, mete { $measure }, brase, tann { $wait }.
head-tablets = { $echo }: { $measure }, brase, tann { $wait }.
head-tablets-cloudy = { $echo }: kite l poze, koule l, { $measure }, brase, tann { $wait }.
head-powder = { $echo }: fonn { $measure } nan yon bokit dlo, vide l ladan, brase, tann { $wait }.
head-powder-cloudy = { $echo }: kite l poze, koule l. Fonn { $measure } nan yon bokit dlo, vide l ladan, brase, tann { $wait }.
head-stock = { $echo }: { $grams } ak dlo jis { $litres } = solisyon { $percent }%. Mete { $measure } solisyon an, brase, tann { $wait }.
head-stock-cloudy = { $echo }: kite l poze, koule l. { $grams } ak dlo jis { $litres } = solisyon { $percent }%. Mete { $measure } solisyon an, brase, tann { $wait }.
head-label = { $echo }: mete sa etikèt la di pou dlo sa a, brase, tann { $wait }.
head-label-cloudy = { $echo }: kite l poze, koule l, mete sa etikèt la di, brase, tann { $wait }.

if-cloudy-or-cold = Twoub: { $measure }, { $wait }; frèt: menm kantite, { $coldwait }.
head-new-tank = { $echo }. Tank nèf oswa sal, dabò: fwote l, plen l, mete { $measure }, kite l { $wait }, vide l. Apre sa mete dòz la.
if-new-tank = Tank nèf oswa sal: fwote l, plen l, mete { $measure }, kite l { $wait }, vide l; apre sa mete dòz la.
if-cloudy-or-cold-same = Twoub oswa frèt: { $measure }, { $wait }.
if-cloudy = Twoub: koule l, { $measure }, { $wait }.
if-cold = Frèt: { $measure }, { $wait }.
if-cold-wait = Frèt: tann { $wait }.

more-hint = PLIS
# Words that people may send next; each is one that the lexicon reads.
next-why = POUKISA
next-remind = RAPLE M
next-help = ED

## Wells

head-well = Pwi { $across } lajè, { $depth } dlo ({ $volume }): mele { $measure } { $product } nan bokit dlo, vide l ladan, brase, kite { $wait }. PA BWE avan ponpe l jis { $ready } mg/L.
head-well-cloudy = Pwi labou: vide l, kite l klè. { $across } laj, { $depth } dlo ({ $volume }): { $measure } { $product } nan bokit, vide ladan, brase, { $wait }. PA BWE avan ponpe jis { $ready } mg/L.
well-wall = Dabò, bwose mi an ak { $ml } ladan nan { $litres } dlo.
well-wall-stock = Dabò, bwose mi an ak { $ml } solisyon { $percent }% nan { $litres } dlo.
well-hurry = Yon pwi bezwen { $wait }. Sèlman nan ijans { $emergency }, apre ponpe l, teste l. Pèsòn pa bwè anvan.
well-emergency = Sèlman nan ijans: { $wait } nan plas.

## Solutions for hands, cleaning and stock

head-dilute-liquid = { $volume } a { $target }%: { $measure } { $product } + { $water } dlo (yon pati + { $parts } pati dlo).
head-dilute-as-is = { $volume } a { $target }%: sèvi ak { $product } jan l ye a, pa mete dlo.
head-dilute-tablets = { $volume } a { $target }%: { $count } { $product } ({ $per } nan chak lit), mete dlo jiska { $volume }.
head-dilute-made-up = { $volume } a { $target }%: { $measure } { $product } ({ $per } nan chak lit), mete dlo jiska { $volume }.
dilute-hands = Pou men: pa pou je, pa pou bwè.
dilute-surfaces = Kite sifas yo mouye { $wait }, apre rense yo. Pa pou bwè.
dilute-stock = Fè l nèf chak jou. Pa bwè l konsa.
dilute-any-volume = Nenpòt kantite: yon pati ladan + { $parts } pati dlo.

## Chlorine tests

residual-enough = { $reading } mg/L, li ase (omwen { $least }). Kite l kouvri, bwè l nan { $keeps }.
residual-enough-at-use = { $reading } mg/L. { $retest } apre dòz la: twò piti (omwen { $aim }), pa bwè l. Nan galon kote moun bwè a, jiska { $keeps }: ase (omwen { $atuse }). Kilès ladan yo?
residual-low = { $reading } mg/L twò piti, omwen { $aim }. Pa bwè l ankò: mete klò, tann { $retest }, teste ankò. Pou kantite a, voye lit, pwodui ak %.
residual-add = { $reading } mg/L twò piti. Nan { $volume } mete { $measure } { $product }, brase, tann { $wait }, teste ankò: omwen { $aim } mg/L anvan nenpòt moun bwè.
residual-add-zero = { $reading } mg/L. Dlo a pa t janm trete? Mande tout dòz la. Deja trete: nan { $volume } mete { $measure } { $product }, brase, tann { $wait }, teste ankò: { $aim } mg/L anvan bwè.
residual-add-stock = { $reading } mg/L twò piti. { $grams } { $product } ak dlo pou { $litre } = { $percent }%: nan { $volume } mete { $measure } ladan, tann { $wait }, teste ankò: { $aim } mg/L.
residual-add-zero-stock = { $reading } mg/L. Dlo a pa t janm trete? Mande tout dòz la. Trete: { $grams } { $product } ak dlo pou { $litre } = { $percent }%; nan { $volume } mete { $measure } ladan, tann { $wait }, reteste.
residual-too-early = { $reading } mg/L, men li twò bonè pou di. Teste ankò { $retest } apre dòz la: omwen { $aim } mg/L.
residual-high = { $reading } mg/L depase limit chak jou a (maksimòm { $most }). Kite l louvri oswa vide l youn nan lòt nan galon pwòp, teste ankò.
residual-too-high = { $reading } mg/L twòp: pa bwè l ankò. Kite l louvri oswa vide l youn nan lòt nan galon pwòp jiska { $most } mg/L oswa mwens.
residual-stale = { $reading } mg/L, e li trete depi plis pase { $keeps }: trete l ankò anvan ou bwè.
residual-no-kit = San twous tès: { $retest } apre dòz la li dwe gen yon ti sant klò. Pa gen sant: menm dòz la yon lòt fwa, tann { $retest }. Toujou pa gen: pa bwè l.
residual-already-dosed = Klò deja ladan: pa mete plis kounye a. { $retest } apre dòz la li dwe gen yon ti sant klò. Sant fò, oswa twòp klò: pa bwè l, pran lòt dlo.
residual-still-no-smell = Toujou pa gen sant: pa bwè l, pa mete plis. Bouyi l, oswa jwenn dlo pi klè epi trete l a nèf.
residual-no-smell = Pa gen sant: mete menm dòz la yon lòt fwa, tann { $retest }, pran sant li. Toujou pa gen sant klò: pa bwè l. Bouyi l oswa jwenn dlo pi klè.
residual-smells = Yon ti sant klò apre tan an bon: ou ka bwè l. Si sant lan fò, kite l louvri oswa vide l youn nan lòt nan galon pwòp.
residual-well-not-ready = { $reading } mg/L: pwi a poko bon. PA BWE. Kontinye ponpe jiska { $ready } mg/L oswa mwens, apre trete dlo a anvan bwè jis tès yo bon.
residual-well-ready = { $reading } mg/L: yo ponpe pwi a ase ({ $ready } oswa mwens). Kontinye trete dlo li anvan ou bwè jis tès yo bon.
residual-zero = Zewo ankò? Dlo a manje klò: fè l pi klè, oswa eseye dòz nan bokit (tès bokit).

## Jar test

jar-found = Tès bokit: { $dose } nan { $jar } bay { $aim } mg/L. Sa fè { $each } menm solisyon an pou chak { $thousand }. Voye konbyen lit tank lan pou dòz li.
jar-found-tank = Tès bokit: { $dose } nan { $jar } bay { $aim } mg/L. Pou { $tank }: { $measure } menm solisyon an, brase, tann { $wait }, teste ankò.
jar-all-above = Tout bokit depase { $aim } mg/L: refè tès la ak mwens nan chak { $jar }.
jar-all-below = Okenn bokit pa rive { $aim } mg/L: refè tès la ak plis nan chak { $jar }.
jar-how-to = Tès bokit: { $doses } mL solisyon { $percent }% nan kat bokit { $jar }, brase, tann { $wait }, teste chak. Voye mL yo ak sa chak montre. Vize { $aim } mg/L.
jar-uneven = Plis solisyon dwe bay plis klò; chif sa yo monte desann. Tanpri refè tès bokit la.

## Stock and people

people = { $people } moun
supply-clear-water = dlo klè
supply-cloudy-water = dlo twoub
stock-counted = { $count } { $product }
stock-measured = { $amount } { $product }
supply-treats = { $stock } ka trete anviwon { $litres } { $water }.
supply-lasts = { $stock }: anviwon { $days } pou { $people }, { $each } chak moun pa jou ({ $drinkingdays } si se pou bwè sèlman, { $drinking }).
supply-serves = { $stock }: anviwon { $people } pou { $days }, { $each } chak moun pa jou ({ $drinkingpeople } si se pou bwè sèlman, { $drinking }).
supply-needs = { $people }, { $days }, { $each } chak moun pa jou = { $litres } { $water }: { $need }. Kòmande { $measure } ({ $margin }% anplis).
supply-counted-cloudy = Kalkil la fèt pou dlo twoub.
supply-ages = Men li kenbe { $months } mwa sèlman.
supply-if-cloudy = Dlo twoub mande doub.

## Keeping

storage-water = Kenbe dlo trete kouvri, nan galon pwòp ak kou etwat. Vide l, oswa sèvi ak tiyo oswa louch: pa mete men. Bwè l nan { $keeps }, apre trete l ankò.
storage-hands = Si men antre ladan, oswa yon gode sal, trete l ankò.
storage-rinse = Rense galon an anvan ou plen l: { $ml } javèl nan { $litre } dlo, { $seconds } segonn.
storage-product = Kenbe { $product } fèmen, kote ki fre ak fènwa, lwen timoun, lwen asid ak lòt pwodui netwayaj. Chanje l apre { $months } mwa.
storage-product-by-pack = Kenbe { $product } fèmen, kote ki fre, sèk, fènwa, lwen timoun. Pa sèvi ak li apre dat ki sou pake a.

## Boiling, sun, filters

head-boil = Fè l bouyi gwo bouyon, kite l bouyi { $wait }, kite l refwadi kouvri.
head-boil-cloudy = Kite l poze, koule l, fè l bouyi gwo bouyon, kite l bouyi { $wait }, kite l refwadi kouvri.
if-high = Pi wo pase { $altitude } m oswa nan mòn: { $wait }.
boiling-point = A { $altitude } m dlo bouyi a { $celsius } C: ase cho pou touye tout mikwòb dlo bwè.
head-sun = Boutèy klè jiska { $size } nan solèy: { $wait }.
head-sun-unsure = Boutèy klè jiska { $size }: { $sunny } si solèy la klere tout jounen, sinon { $wait }. Pa fè l lè lapli.
head-sun-rain = Lè lapli, solèy pa ka fè dlo a bon. Bouyi l, oswa mete klò. Oswa ranmase dlo lapli pwòp epi trete l.
fill-and-shake = Plen twa ka, souke, fini plen, kouche l.
head-filter = Yon filt { $pore } um{ $stops }{ $passes }.
head-filter-unknown = Yon filt ou pa konn gwosè twou li{ $stops }{ $passes }. Chèche chif um ki sou li.
filter-stops = { " " }bare { $list }
filter-passes-after-stops = ; li pa bare { $list }
filter-passes-only = { " " }pa bare { $list }
reason-kills-all = Bouyi touye tout mikwòb, nan dlo labou ak dlo frèt tou.
reason-nothing-else = Anyen nan sa ou di yo pa fè l bon; dife wi.
reason-only-one = Se sèl bagay ou di ki mache isit la.
reason-two-barriers = De etap pi sèten pase youn.
reason-widest-cover = Se li ki bare plis nan sa ou genyen.
head-choose = Pi bon isit la: { $first }.
head-choose-then = Pi bon isit la: { $first }. Si sa pa posib: { $second }.
head-choose-nothing = Pi bon: { $first }. Di m sa ou genyen: javèl, tablèt, yòd, yon filt, solèy.
method-pair = { $one }, apre { $two }

organism-bacteria = bakteri
organism-viruses = viris
organism-giardia = Giardia
organism-cryptosporidium = Cryptosporidium
organism-some = kèk { $what }
list-two = { $one } ak { $two }
list-two-or = { $one } oswa { $two }
list-more = { $one }, { $rest }

## Cautions: one short sentence each

caution-absolute-pore = Chif la dwe absoli (oswa pou kist), pa nominal.
caution-bottle-size = Sèvi ak boutèy PET klè, pa krich an vè ni gwo galon.
caution-clean-tank-first = Netwaye tank lan dabò; pa janm pran yon tank ki te gen gaz oswa poupou.
caution-cool-and-dark = Kenbe l kote ki fre ak fènwa.
caution-danger-signs = San, je fon, pa pipi, fèb anpil: ale nan klinik kounye a.
caution-fresh-daily = Fè l nèf chak jou.
caution-gloves-and-air = Mete gan, louvri pòt, pwoteje je.
caution-keep-from-children = Kenbe l lwen timoun.
caution-keep-treating = Kontinye trete dlo pwi a jis tès yo bon.
caution-let-stand = Twò fò? Kite l louvri oswa vide l youn nan lòt nan galon pwòp.
caution-narrow-neck = Galon kouvri, kou etwat, pa mete men.
caution-never-mix = Pa janm mele l ak asid oswa amonyak: gaz.
caution-not-for-drinking = Pa pou bwè.
caution-not-until-pumped = Pa bwè anvan yo ponpe l epi teste l.
caution-rehydrate = Sewòm oral ti gòje pa ti gòje.
caution-retest-later = Teste ankò apre tan an.
caution-stir-tank = Mete dòz la pandan l ap plen oswa byen brase; fèmen tiyo yo pandan w ap tann.
caution-tablet-too-strong = Tablèt twò fò pou sa: trete plis dlo ak li.
caution-well-clear-first = Pwi gen labou: vide l, kite l klè dabò.
caution-well-ph = Ak pH sa a gwo dòz klò nan pwi mache mal: mande biwo dlo a.
caution-chemicals-stay = Pwodui chimik ak sèl rete ladan.
caution-cold-takes-longer = Pi lontan si l frèt.
caution-cryptosporidium-survives = Cryptosporidium pa mouri.
caution-fresh-air = Gaz: soti deyò nan bon lè.
caution-giardia-partly = Giardia ka rete vivan.
caution-higher-boil-longer = Nan mòn: bouyi pi lontan.
caution-iodine-unsuitable = Pa pou fanm ansent, maladi tiwoyid, ti bebe, ni pou lontan.
caution-leptospira-passes = Leptospira pase ladan.
caution-label-first = Si etikèt la bay yon dòz pou dlo bwè, swiv li.
caution-no-shorter-wait = Pa rakousi tan an.
caution-medical-help = Chèche swen medikal kounye a.
caution-no-vomiting = Pa fè moun nan vomi.
caution-rinse-with-water = Rense ak dlo.
caution-not-in-rain = Pa fè l lè lapli.
caution-old-bottle = Boutèy ou gen plis pase yon an: pran yon nèf.
caution-pore-unknown = Gwosè twou filt la pa konnen: pa konte sou li sèl.
caution-smell-check = Apre tan an li dwe gen yon ti sant klò; si li pa genyen l, mete menm dòz la yon fwa ankò epi tann ankò; si toujou pa gen sant, pa bwè l.
caution-second-method = Fè yon dezyèm metòd tou.
caution-sewage = Dlo poupou: bouyi l si w kapab.
caution-spores-survive = Espò mikwòb mande presyon: bouyi pa esterilize enstriman.
caution-strain-first = Kite l poze epi koule l dabò.
caution-print-test = Ou dwe ka li ekriti atravè boutèy plen an.
caution-lower-figure = Mwen pran pi piti chif sou etikèt la.
caution-too-murky = Si ou pa ka li ekriti atravè l, bouyi l.
caution-unscented-only = Javèl senp sèlman.
caution-viruses-pass = Viris pase: bouyi oswa mete klò tou.
caution-weak-immunity-boil = Ti bebe oswa moun defans fèb: bouyi.
caution-two-days = Ou pa sèten solèy la? Kite l tou de jou yo.

extra-lower-figure = Mwen pran pi piti chif etikèt la.
extra-old-bottle = Vye boutèy: pran yon nèf.
extra-see-health-worker = Malad yo bezwen swen ak sewòm oral kounye a.

covers = Touye: bakteri { $bacteria }, viris { $viruses }, Giardia { $giardia }, Cryptosporidium { $cryptosporidium }.
boil-kills-all = Bouyi touye yo tout.
cover-yes = wi
cover-partly = yon pati
cover-no = non
defer = Règ biwo sante w la pase anvan.

## Changed doses

adjusted-faster = { $echo }. Sèlman si l klè epi li pa frèt: { $measure } antou, tann { $wait }. Plis gou, pa plis sekirite.
adjusted-weaker = { $echo }. Pwochen fwa, sèlman si l klè epi li pa frèt: { $measure }, tann { $wait }. Dlo sa a: kite l louvri.
cannot-faster = Ou pa ka rakousi l san danje. Pi vit: bouyi gwo bouyon, apre kite l refwadi.
of-solution = PA JANM bwè l: pou netwaye sèlman. Fè l nèf chak jou, fèmen, ak etikèt, lwen timoun. Pou dlo bwè voye lit yo ak % boutèy la.
too-strong = Twòp klò? Kite l louvri kèk èdtan oswa vide l youn nan lòt nan galon pwòp. Pa janm rakousi tan an. Si moun bwè l epi li santi l mal: chèche swen.
cannot-weaker = Mwens pa t ap bon isit la. Pou gou a: kite l louvri, oswa vide l youn nan lòt nan galon pwòp, apre tan an.

## Questions

ask-product = Ki pwodui ou genyen: javèl, tablèt klò, poud klò oswa yòd?
ask-product-chlorine = Ki klò ou genyen: javèl, ipoklorit kalsyòm oswa lacho klore?
ask-product-unfit-for-well = Sa a pa pou pwi. Ou gen javèl, ipoklorit kalsyòm oswa lacho klore?
ask-product-unfit-for-cleaning = Sa a pa pou sa. Ou gen javèl, poud klò oswa tablèt klò?
ask-product-unfit-for-residual = Sa a pa fè klò a monte. Ou gen javèl, poud klò oswa tablèt klò?
ask-product-unfit-for-supply = Etikèt li di konbyen dlo l trete. Ki lòt pwodui ou genyen: javèl, poud klò, tablèt klò oswa yòd?
ask-product-bleach-tablet = Kisa ki nan tablèt sa yo? Voye sa etikèt la di, ak mg a. Yo dwe fèt pou dlo bwè.
ask-product-chlorine-form = Klò a se likid, poud oswa tablèt? Voye l ak % oswa mg ki sou etikèt la.
ask-product-iodine-form = Ki yòd li ye: tenti, povidòn yòd oswa tablèt?
ask-product-pool = Klò pisin ka gen estabilizan: li pa pou dlo bwè. Ou gen javèl senp, tablèt pou dlo bwè oswa yòd? Sinon, bouyi.
ask-product-powder-form = Ki poud: ipoklorit kalsyòm oswa lacho klore? Voye % ki sou etikèt la.
ask-product-spoiled = Javèl ki gen pafen, ki epè oswa ki gen koulè pa pou dlo bwè. Ou gen javèl senp, tablèt oswa yòd? Sinon, bouyi.
ask-product-tablet-form = Tablèt yo se klò oswa yòd? Voye non an ak mg ki sou plakèt la.
ask-product-two-products = Sa fè plis pase yon pwodui. Kilès ou pral sèvi?

ask-strength = Ki % ki sou etikèt { $product }?
ask-strength-no-label = San % la mwen pa bay dòz. Ou ka jwenn lòt boutèy ak etikèt? Sinon, bouyi: gwo bouyon, apre kite l refwadi. Si ou pa gen dife nonplis, di: san etikèt san dife.
ask-strength-degrees = Ki % ki sou etikèt { $product }? Degre ka vle di de bagay.
ask-strength-denied = Enben ki % li ye? Li etikèt { $product } pou mwen.
ask-strength-bound = Ki % egzak ki sou etikèt { $product }? "Mwens pase" pa ase pou yon dòz.
ask-strength-guessed = Tanpri gade etikèt { $product }: ki % ki ekri sou li?
ask-strength-outside = { $product } pa fèt ak fòs sa a. Ki % ki ekri sou etikèt la?
ask-strength-is-target = Sa a se pou dlo a. Ki % ki ekri sou etikèt { $product }?
ask-strength-is-solution = Sa a se yon fòs pou netwaye. Ki % ki ekri sou etikèt { $product }?
ask-strength-thinned = { $product } ki deja mele ak dlo, fòs li pa konnen. Ki % ki sou etikèt yon boutèy ki poko louvri oswa poko mele? Si pa genyen, bouyi.
ask-strength-two = De % ki pa menm. Kilès ki ekri sou etikèt { $product }?
ask-strength-unreadable = Mwen pa ka li % la. Tanpri voye l ankò, konsa: 3,5%
ask-strength-wide = De chif sa yo twò lwen youn ak lòt. Ki % egzak ki sou etikèt { $product }?

ask-tablet = Konbyen mg ki nan yon tablèt? Li sou plakèt la oswa bwat la.
ask-tablet-compound = Se mg yòd? Souvan tablèt ekri konpoze a. Konbyen mg yòd yon tablèt lage?
ask-tablet-two = De gwosè tablèt. Ki mg ou pral sèvi?
ask-tablet-outside = Se pa yon tablèt pou dlo bwè mwen konnen. Konbyen mg ki ekri sou plakèt la?

ask-volume = Konbyen lit dlo ou vle trete?
ask-volume-uncounted = Konbyen lit sa fè antou?
ask-volume-unsized = Konbyen lit li pran? (bokit ak galon pa menm gwosè)
ask-volume-outside = Mwen pa ka sèvi ak kantite sa a. Konbyen lit dlo ou vle trete?
ask-volume-two = Gen plis pase yon kantite dlo. Konbyen lit ou vle trete yon sèl kou?
ask-volume-unreadable = Mwen pa ka sèten kantite a. Konbyen lit dlo? Tanpri ekri l san pwen, konsa: 1000 L

ask-volume-solution = Konbyen lit solisyon ou vle fè?
ask-volume-tank = Konbyen lit dlo ki ladan l?
ask-jar = Konbyen lit dlo ki te nan chak bokit tès?

ask-diameter = Ki lajè pwi a, an mèt?
ask-diameter-outside = Mwen pa ka sèvi ak lajè sa a. Konbyen mèt lajè pwi a genyen?
ask-depth = Ki pwofondè DLO ki nan pwi a, an mèt? Desann yon wòch nan kòd epi mezire pati ki mouye a.
ask-well-depth-only = Sa a se pwi a. Ki pwofondè DLO ki ladan l, an mèt? Desann yon wòch nan kòd epi mezire pati ki mouye a.
ask-water-depth-outside = Mwen pa ka sèvi ak pwofondè sa a. Konbyen mèt dlo ki nan pwi a?
ask-target = Ki fòs li dwe genyen? Men { $hands }%, planche { $floors }%, tach san { $blood }%, vomi oswa poupou kolera { $stools }%. Biwo sante w ka di yon lòt.
ask-target-outside = Mwen pa ka sèvi ak fòs sa a. Konbyen % solisyon an dwe ye? Men { $hands }%, planche { $floors }%, tach san { $blood }%.
ask-target-too-strong = { $product } ou a pi fèb pase sa. Konbyen % solisyon an dwe ye? Men { $hands }%, planche { $floors }%, tach san { $blood }%.
ask-residual = Ki sa tès la montre, an mg/L (oswa ppm)?
ask-people = Pou konbyen moun?
ask-people-outside = Mwen pa ka sèvi ak chif sa a. Pou konbyen moun?
ask-days = Pou konbyen jou? (Oswa di m konbyen ou genyen.)
ask-days-outside = Mwen pa ka sèvi ak sa. Pou konbyen jou?
ask-stock-liquid = Konbyen lit { $product } ou genyen? Oswa: pou konbyen moun ak konbyen jou?
ask-stock-powder = Konbyen kg oswa g { $product } ou genyen? Oswa: pou konbyen moun ak konbyen jou?
ask-stock-tablets = Konbyen tablèt ou genyen? Oswa: pou konbyen moun ak konbyen jou?
ask-stock-outside = Mwen pa ka sèvi ak kantite sa a. Konbyen { $product } ou genyen?

last-resort = DENYE REKOU, fòs pa konnen: { $drops } nan chak lit, tann { $wait }. Li dwe gen yon ti sant klò; sinon, refè yon fwa, tann; si toujou pa gen, pa bwè l.
last-resort-total = DENYE REKOU, fòs pa konnen: { $total } antou ({ $drops } pa lit), tann { $wait }. Li dwe gen sant klò; sinon refè yon fwa, tann; si toujou pa gen, pa bwè l.

## No dose

refused-chemical = Pa gen dòz: klò, yòd, bouyi, filt pa retire gaz, pestisid, dechè, sèl. Pa bwè l. Chèche lòt dlo, di biwo sante a.
refused-iodine_unsuitable = Pa bay yòd pou fanm ansent, maladi tiwoyid, ti bebe, ni plis pase kèk semèn. Bouyi pito, oswa javèl senp: voye % li ak lit yo.
refused-mixed = DANJE: pa janm mele javèl ak asid, vinèg, amonyak, pwodui netwayaj: gaz pwazon. Louvri, ale nan bon lè. Javèl senp ak dlo sèlman.
refused-other_use = Mwen reponn pou dlo bwè ak netwayaj sèlman. Pou blese, je, dyaliz, pwason, pisin, lesiv oswa manje, mande yon enfimyè oswa doktè.
refused-over_limit = Plis pase de fwa dòz la pa bon pou bwè.

## Somebody hurt or ill

first-aid = CHECHE SWEN MEDIKAL KOUNYE A. Si l vale l: rense bouch, ti gòje dlo si l reveye, PA fè l vomi. Je oswa po: rense { $rinse } ak dlo. Gaz: bon lè deyò.
first-aid-powder = CHECHE SWEN MEDIKAL KOUNYE A. Si l vale l: rense bouch, ti gòje dlo si l reveye, PA fè l vomi. Po: wete poud la dabò. Je, po: rense { $rinse }. Gaz: bon lè deyò.
# Before first aid, where the deployment names a number to call.
help-line = Rele { $number }.
first-aid-then = Apre sa, mande ankò.
unsure = Moun vale l oswa l vole sou li? Rense, PA fè l vomi, chèche swen medikal. Si ou vle dòz la sèlman, voye pwodui, % ak lit.
illness = Bay sewòm oral ti gòje, kontinye bay tete. Nan klinik KOUNYE A si gen san, je fon, pa pipi, fèb anpil oswa pa ka bwè. Mwen pa ka di ki maladi.
illness-danger = NAN KLINIK KOUNYE A. Pa bay anyen nan bouch si l san konesans oswa pa ka vale. Si l reveye: sewòm oral ti gòje sou wout, bay tete. Mwen pa ka di ki maladi.
illness-feeding = Prepare sewòm oral jan pake a di, ak dlo trete. Kontinye bay manje.
illness-water = Trete tout dlo bwè depi kounye a, lave men ak savon, di biwo sante a si plis pase yon moun malad.

## Service

kept = Mwen sonje: { $product }{ $label }. Kounye a voye sèlman lit yo.
kept-part = Mwen sonje: { $product }. Ki % oswa mg ki sou etikèt li? Voye: { $product } mwen an se ...
kept-figure = Mwen sonje:{ $label }. Ki pwodui li ye?
not-kept = Mwen pa anrejistre sa: mwen pa sèten pwodui a ak fòs li. Voye konsa: sonje javèl 5%
kept-opened = Louvri { $date }.
kept-future = { $date } poko rive. Kilè ou te louvri l? Voye konsa: louvri 1 mas 2026.
bottle = { $bottle }.
bottles = Mwen sonje: { $list }
bottles-none = Mwen pa sonje okenn boutèy ou. Voye konsa: sonje javèl 5%, 1 L
left = Rete: { $amount }, trete { $litres }.
left-amount = Rete: { $amount }.
left-days = Jan w ap sèvi a, { $days }: chèche plis kounye a.
left-short = Dapre kont mwen, se { $amount } sèlman ki rete nan boutèy ou.
left-empty = Dapre kont mwen li vid kounye a: chèche plis.
age-soon = Sèvi ak li byento: li kenbe { $months } mwa.
age-now = Li gen plis pase { $months } mwa: pran yon nèf.
age-estimate = Estimasyon: anviwon { $percent }% fòs li rete si l kenbe a { $celsius } C. Dòz la pa konte sou sa: tcheke sant lan.
undone = Pa konte. { $left }
nothing-to-undo = Mwen pa t konte okenn dòz ou jodi a.
will-remind = M ap ekri w nan { $wait }.
nothing-to-wait-for = Pa gen tan datant pou m raple w. Mande yon dòz dabò.
reminder-chlorine = { $wait } fini. Dlo a te twoub oswa frèt? Tann pi lontan. Pran sant li: ti sant klò, li bon. Pa gen sant: menm dòz la yon fwa ankò, tann ankò.
reminder-disinfectant = { $wait } fini: ou ka bwè l. Si dlo a te twoub oswa frèt, tann pi lontan.
reminder-retest = { $wait } fini: teste klò a ankò anvan nenpòt moun bwè.
reminder-sun = { $wait } fini. Si solèy la te klere, ou ka bwè l; si se pa sa, kite l pi lontan.
reminder-surface = { $wait } fini: rense sifas la.
reminder-well = { $wait } fini: ponpe pwi a, apre teste l. Pèsòn pa bwè anvan.
seen = Lòt kesyon ou a ({ $topic }): voye l pou kont li.
topic-boil = bouyi
topic-dose = dòz la
topic-dilute = netwayaj
topic-storage = konsève
topic-well = pwi a
topic-why = poukisa
set-language = Lang chwazi: { $language }.
set-language-unknown = Mwen poko pale { $language }, mwen pa konnen l. M ap kontinye an kreyòl.
set-units-metric = Inite chwazi: lit ak mL.
set-units-us = Inite chwazi: galon US.
set-units-imperial = Inite chwazi: galon enperyal.
help = Voye pwodui, % etikèt la, lit. Konsa: 20 L twoub, javèl 5%. Mande tou: bouyi, pwi, netwayaj, tès klò, stòk, konsève, PLIS, POUKISA, KANPE, BLIYE.
greeting = matone di w kijan pou fè dlo bon pou bwè. Voye pwodui, % ak lit, konsa: 20 L twoub, javèl 5%. Oswa ED.
stopped = Mwen kanpe: pa gen mesaj ou pa mande. M ap toujou reponn kesyon ou. KOMANSE pou rekòmanse.
started = Mesaj yo louvri. Voye pwodui, % ak lit, konsa: 20 L twoub, javèl 5%. Oswa ED.
dropped = Mwen pa sonje { $product } ou a ankò.
forgotten = Tout sa m te kenbe sou ou efase.
not-understood = Mwen pa konprann. Voye pwodui, % ak lit, konsa: 20 L twoub, javèl 5%. Oswa ED.
nothing-before = Mande yon dòz dabò. Voye pwodui, % ak lit, konsa: 20 L twoub, javèl 5%.
nothing-more = Se tout. POUKISA bay sous yo.
why = { $dose }{ $wait }{ $logs } Sous: { $sources }.
why-dose = Li bay { $mg } mg/L.
why-wait-rule = { " " }Tan: règ pibliye.
why-wait-unknown = { " " }Tan: règ pibliye, tanperati pa konnen.
why-wait-cold = { " " }Tan: pi lontan pou dlo frèt.
why-wait-ct = { " " }Tan: tan kontak { $reached } sou { $needed } mg.min/L ki nesesè, si gen { $residual } mg/L.
why-logs = { " " }A { $celsius } C, pH { $ph }, ak { $residual } mg/L: tan kontak { $reached } sou { $needed } mg.min/L; viris { $viruses } log, Giardia { $giardia } log, Cryptosporidium anyen.
why-boil = Gen ajans ki mande bouyi pi lontan an sèlman nan wotè, e ajans mondyal la gwo bouyon an sèlman: mwen kenbe règ ki pi sevè a.
source-published = { $title } ({ $publisher }, { $year })
source-undated = { $title } ({ $publisher })
source-memory = { $title } ({ $publisher }; selon memwa)
source-common = abitid moun san sous

## The printed chart: read from a wall, so no message of it has to fit an SMS

chart-title = Konbyen javèl ki fè dlo bon pou bwè
chart-caption = Mete kantite javèl likid senp sa a. % la dwe menm ak sa ki sou boutèy ou a.
chart-water = Dlo
chart-bottle = Javèl { $percent }%
chart-clear = Klè
chart-cloudy-or-cold = Twoub oswa frèt
chart-imperial-quarts = { $value } qt enperyal
chart-teaspoons = { $spoons } ti kiyè
chart-tablespoons = { $spoons } gwo kiyè
chart-or = oswa { $way }
chart-then-wait = Apre sa, tann
chart-wait-if-cold = frèt: { $wait }
chart-legend = Mezire yon sèl fason: gout, mL oswa kiyè. Ti kiyè: kiyè kafe plen ra. Gwo kiyè: kiyè soup plen ra. Frèt: men ou santi l frèt. Yon sèl fason sèlman.

chart-step-add = Chèche dlo ou nan tablo a. Mete kantite javèl sa a epi brase.
chart-step-wait = Tann jan dènye ranje a di. Pèsòn pa bwè anvan.
chart-survive = Javèl pa touye { $list }.
chart-may-survive = { $list } ka rete vivan.

chart-caution-chemicals-stay = Javèl pa retire gaz, pestisid, dechè oswa sèl: chèche lòt dlo.
chart-caution-keep-from-children = Kenbe javèl lwen timoun.
chart-caution-label-first = Si boutèy la bay esplikasyon pou dlo bwè, swiv yo.
chart-caution-never-mix = Pa janm mele l ak asid oswa amonyak: gaz.
chart-caution-old-bottle = Sèvi ak yon boutèy ki poko gen yon an.
chart-caution-smell-check = Pran sant li. Li dwe gen yon ti sant klò. Si li pa genyen l, mete menm kantite a yon fwa ankò epi tann ankò. Si toujou pa gen sant, pa bwè l.
chart-caution-strain-first = Dlo twoub: kite l poze, apre sa koule l nan yon twal pwòp.
chart-caution-too-murky = Dlo ki twò twoub pou li ekriti atravè l: pa sèvi ak javèl, bouyi l.
chart-caution-unscented-only = Javèl senp sèlman: pa gen pafen, pa gen koulè, pa epè, pa gen lòt pwodui netwayaj ladan.
chart-caution-weak-immunity-boil = Pou ti bebe ak moun ki gen defans fèb: bouyi dlo a pito.

chart-sources = Sous: { $sources }.
chart-printed = Enprime { $year }-{ $month }-{ $day }.

## Terminal and command line

terminal-greeting = matone: kijan pou fè dlo ou genyen an bon pou bwè. Swiv biwo sante w la dabò.
terminal-examples = Eseye:  2 galon twoub javèl 1%  |  konbyen tan pou bouyi a 2400 m  |  sonje javèl mwen an se 5%
terminal-bye = Kenbe fèm.
