# What matone says in Swahili.
#
# The program hands over every figure, already written out; no message may hold a figure of its
# own. Counts ending in -n only choose the plural form. Keep to the GSM 7-bit alphabet.
# A dose answer is a head and then cautions, as many as one SMS holds; the others wait for ZAIDI.

## Names

product-bleach = blichi
product-bleaching_powder = unga wa blichi
product-calcium_hypochlorite = calcium hypochlorite
product-chlorine_dioxide = chlorine dioxide
product-iodine_tablet = vidonge vya ayodini
product-iodine_tincture = tincture ya ayodini
product-nadcc = vidonge vya klorini
product-povidone_iodine = povidone-iodine

method-fire = kuchemsha
method-filter = chujio
method-sunlight = jua kwenye chupa angavu

product-any = klorini

clarity-clear = { " " }safi
clarity-cloudy = { " " }machafu
# Said where the answer has no room for cloudy water and takes the water for clear.
clarity-assumed = { " " }ikiwa safi
warmth-cold = { " " }baridi
warmth-celsius = { " " }nyuzi { $celsius } C

## Measures

volume-litres = lita { $value }
volume-us-gallons = galoni { $value } za US
volume-us-quarts = kwati { $value } za US
volume-imperial-gallons = galoni { $value } za UK
label-percent = { " " }{ $value }%
label-mg = { " " }{ $value } mg

drops = { $drops-n ->
    [one] tone { $drops }
   *[other] matone { $drops }
}
measure-drops = { $drops } ({ $ml } ml)
measure-ml = { $ml } ml
measure-ml-teaspoon = { $ml } ml (vijiko vya chai { $spoons })
measure-ml-tablespoon = { $ml } ml (vijiko vya chakula { $spoons })
measure-later = Hiyo ni { $measure }.
tablets = { $count-n ->
    [one] kidonge { $count }
   *[other] vidonge { $count }
}
grams = gramu { $grams }
kilograms = kilo { $kilograms }
metres = mita { $metres }
minutes = dakika { $value }
hours = masaa { $value }
days = siku { $value }
days-n = { $days-n ->
    [one] siku { $value }
   *[other] siku { $value }
}

## A dose

echo = { $volume }{ $clarity }{ $warmth }, { $product }{ $label }
echo-remembered = { $volume }{ $clarity }{ $warmth }, { $product }{ $label } yako
head-liquid = { $echo }: tia { $measure }, koroga, subiri { $wait }.
head-liquid-cloudy = { $echo }: yatulie, chuja, tia { $measure }, koroga, subiri { $wait }.
head-tablets = { $echo }: tia { $measure }, koroga, subiri { $wait }.
head-tablets-cloudy = { $echo }: yatulie, chuja, tia { $measure }, koroga, subiri { $wait }.
head-powder = { $echo }: yeyusha { $measure } kwenye ndoo ya maji, mimina ndani, koroga, subiri { $wait }.
head-powder-cloudy = { $echo }: yatulie, chuja. Yeyusha { $measure } kwenye ndoo ya maji, mimina, koroga, subiri { $wait }.
head-stock = { $echo }: { $grams } + maji hadi { $litres } = dawa mama { $percent }%. Tia { $measure } zake, koroga, subiri { $wait }.
head-stock-cloudy = { $echo }: yatulie, chuja. { $grams } + maji hadi { $litres } = { $percent }%: tia { $measure } zake, koroga, subiri { $wait }.
head-label = { $echo }: tia kama lebo yake inavyosema kwa maji haya, koroga, subiri { $wait }.
head-label-cloudy = { $echo }: yatulie, chuja, tia kama lebo inavyosema, koroga, subiri { $wait }.

if-cloudy-or-cold = Machafu: { $measure }, { $wait }; baridi: dozi hiyo hiyo, { $coldwait }.
head-new-tank = { $echo }. Kwanza tanki jipya au chafu: sugua, jaza, tia { $measure }, acha { $wait }, mwaga. Kisha tibu maji.
if-new-tank = Tanki jipya au chafu: sugua, jaza, tia { $measure }, acha { $wait }, mwaga; kisha tibu maji.
if-cloudy-or-cold-same = Machafu au baridi: { $measure }, { $wait }.
if-cloudy = Machafu: chuja, { $measure }, { $wait }.
if-cold = Baridi: { $measure }, { $wait }.
if-cold-wait = Baridi: subiri { $wait }.

more-hint = ZAIDI
# Words that people may send next; each is one that the lexicon reads.
next-why = KWA NINI
next-remind = NIKUMBUSHE
next-help = MSAADA

## Wells

head-well = Upana { $across }, maji { $depth } ({ $volume }): { $product } { $measure } na maji, tia, koroga, acha { $wait }. USINYWE bado: toa maji hadi { $ready } mg/L.
head-well-cloudy = Toa maji yaangae; { $across }, maji { $depth }, { $volume }: { $product } { $measure } + maji, tia, koroga, acha { $wait }. USINYWE, toa hadi { $ready } mg/L.
well-wall = Kwanza sugua ukuta kwa { $ml } zake ndani ya maji { $litres }.
well-wall-stock = Kwanza sugua ukuta kwa { $ml } za dawa mama ya { $percent }% ndani ya maji { $litres }.
well-hurry = Kisima kinahitaji { $wait }. Kwa dharura tu { $emergency }, kisha toa maji, upime. Mtu yeyote ASINYWE kabla.
well-emergency = Kwa dharura tu: { $wait } badala yake.

## Solutions for hands, cleaning and stock

head-dilute-liquid = { $volume } za { $target }%: { $product } { $measure } + maji { $water } (sehemu moja + sehemu { $parts } za maji).
head-dilute-as-is = { $volume } za { $target }%: tumia { $product } kama ilivyo, usiongeze maji.
head-dilute-tablets = { $volume } za { $target }%: { $product } { $count } ({ $per } kila lita), jaza maji hadi { $volume }.
head-dilute-made-up = { $volume } za { $target }%: { $product } { $measure } ({ $per } kila lita), jaza maji hadi { $volume }.
dilute-hands = Kwa mikono: si ya macho, si ya kunywa.
dilute-surfaces = Sehemu ibaki imelowa { $wait }, kisha suuza. Si ya kunywa.
dilute-stock = Tengeneza mpya kila siku. Si ya kunywa kama ilivyo.
dilute-any-volume = Kwa kiasi chochote: sehemu moja yake + sehemu { $parts } za maji.

## Chlorine tests

residual-enough = { $reading } mg/L inatosha (angalau { $least }). Funika, nywa ndani ya { $keeps }.
residual-enough-at-use = { $reading } mg/L. { $retest } baada ya kutia dawa: haitoshi (angalau { $aim }), usinywe. Kwenye chombo cha kunywea, hadi { $keeps }: yatosha (angalau { $atuse }). Ni ipi?
residual-low = { $reading } mg/L haitoshi, angalau { $aim }. Usinywe bado: ongeza klorini, subiri { $retest }, pima tena. Kujua kiasi tuma lita, dawa na %.
residual-add = { $reading } mg/L haitoshi. Kwa { $volume } ongeza { $product } { $measure }, koroga, subiri { $wait }, pima tena: ifike { $aim } mg/L, kabla ya hapo usinywe.
residual-add-zero = { $reading } mg/L. Hayajatiwa dawa? Omba dozi kamili. Yametiwa: kwa { $volume } ongeza { $product } { $measure }, subiri { $wait }, pima: { $aim } mg/L kabla ya kunywa.
residual-add-stock = { $reading } mg/L haitoshi. { $product } { $grams } + maji hadi { $litre } = { $percent }%: kwa { $volume } ongeza { $measure } zake, subiri { $wait }, pima tena: { $aim } mg/L.
residual-add-zero-stock = { $reading } mg/L. Hayajatiwa dawa? Omba dozi kamili. Yametiwa: { $product } { $grams } + maji hadi { $litre } = { $percent }%; kwa { $volume } ongeza { $measure } zake, subiri { $wait }, pima.
residual-too-early = { $reading } mg/L, lakini ni mapema mno. Pima tena { $retest } baada ya kutia dawa: angalau { $aim } mg/L.
residual-high = { $reading } mg/L ni zaidi ya kawaida ya kila siku (mwisho { $most }). Acha wazi au mimina chombo hadi chombo safi, pima tena.
residual-too-high = { $reading } mg/L ni nyingi mno: usinywe bado. Acha wazi au mimina chombo hadi chombo safi mpaka { $most } mg/L au chini.
residual-stale = { $reading } mg/L, na yalitibiwa zaidi ya { $keeps } zilizopita: tibu tena kabla ya kunywa.
residual-no-kit = Bila kipimo: { $retest } baada ya dozi yanuke klorini kidogo. Hakuna harufu: rudia dozi ile ile mara moja, subiri { $retest }. Bado hakuna: usinywe.
residual-already-dosed = Yameshatiwa dawa: usiongeze sasa. { $retest } baada ya dozi yanuke klorini kidogo. Yakinuka sana au dawa imezidi: usinywe, chukua maji mapya.
residual-still-no-smell = Bado hakuna harufu: usinywe, usiongeze dawa. Chemsha, au tafuta maji safi zaidi uyatibu upya.
residual-no-smell = Hakuna harufu: ongeza dozi ile ile mara moja, subiri { $retest }, nusa tena. Bado hakuna harufu ya klorini: usinywe. Chemsha au tafuta maji safi zaidi.
residual-smells = Harufu kidogo ya klorini baada ya kusubiri ni nzuri: unaweza kunywa. Ikiwa kali, acha wazi au mimina chombo hadi chombo safi.
residual-well-not-ready = { $reading } mg/L: kisima hakiko tayari. USINYWE. Endelea kutoa maji hadi { $ready } mg/L au chini, kisha tibu maji ya kunywa hadi kipimo kioneshe ni safi.
residual-well-ready = { $reading } mg/L: maji ya kisima yametolewa vya kutosha ({ $ready } au chini). Endelea kutibu maji yake ya kunywa hadi kipimo kioneshe ni safi.
residual-zero = Sifuri tena? Maji yanakula klorini: yasafishe tope, au jaribu dozi kwenye ndoo (kipimo cha ndoo).

## Jar test

jar-found = Kipimo cha ndoo: { $dose } kwa { $jar } inaacha { $aim } mg/L. Ni { $each } za mchanganyiko huo kwa kila { $thousand }. Tuma lita za tanki upate dozi yake.
jar-found-tank = Kipimo cha ndoo: { $dose } kwa { $jar } inaacha { $aim } mg/L. Kwa { $tank }: { $measure } za mchanganyiko huo, koroga, subiri { $wait }, pima tena.
jar-all-above = Ndoo zote zimezidi { $aim } mg/L: rudia kipimo kwa dawa kidogo zaidi katika kila { $jar }.
jar-all-below = Hakuna ndoo iliyofika { $aim } mg/L: rudia kipimo kwa dawa zaidi katika kila { $jar }.
jar-how-to = Kipimo cha ndoo: tia { $doses } ml za dawa ya { $percent }% kwenye ndoo nne za { $jar }, koroga, subiri { $wait }, pima. Tuma ml na kipimo cha kila ndoo. Lengo { $aim } mg/L.
jar-uneven = Dawa zaidi lazima iache klorini zaidi; vipimo hivi vinapanda na kushuka. Tafadhali rudia kipimo cha ndoo.

## Stock and people

people = { $people-n ->
    [one] mtu { $people }
   *[other] watu { $people }
}
supply-clear-water = maji safi
supply-cloudy-water = maji machafu
stock-counted = { $product } { $count }
stock-measured = { $product } { $amount }
supply-treats = { $stock }: inatibu kama { $litres } za { $water }.
supply-lasts = { $stock }: kama { $days } kwa { $people }, { $each } kila mtu kwa siku ({ $drinkingdays } kwa kunywa tu, { $drinking }).
supply-serves = { $stock }: kama { $people } kwa { $days }, { $each } kila mtu kwa siku ({ $drinkingpeople } kwa kunywa tu, { $drinking }).
supply-needs = { $people }, { $days }, { $each } kila mtu kwa siku = { $litres } za { $water }: { $need }. Agiza { $measure } (ziada { $margin }%).
supply-counted-cloudy = Imehesabiwa kwa maji machafu.
supply-ages = Lakini inakaa miezi { $months } tu.
supply-if-cloudy = Maji machafu yanahitaji dawa mara mbili.

## Keeping

storage-water = Maji yaliyotibiwa: chombo safi, mdomo mwembamba, funika. Mimina, au tumia bomba au kata; usiingize mikono. Kunywa ndani ya { $keeps }, kisha tibu tena.
storage-hands = Mikono au kikombe kichafu kikiingia, tibu tena.
storage-rinse = Suuza chombo kabla ya kujaza: blichi { $ml } ndani ya maji { $litre }, sekunde { $seconds }.
storage-product = Weka { $product } imefungwa, penye ubaridi na giza, mbali na watoto, asidi na dawa nyingine za usafi. Nunua mpya baada ya miezi { $months }.
storage-product-by-pack = Weka { $product } imefungwa, penye ubaridi, pakavu na giza, mbali na watoto. Usitumie baada ya tarehe ya pakiti.

## Boiling, sun, filters

head-boil = Chemsha hadi yatokote kwa nguvu, yaendelee kutokota { $wait }, yapoe yakiwa yamefunikwa.
head-boil-cloudy = Acha yatulie, chuja, chemsha hadi yatokote kwa nguvu, yaendelee kutokota { $wait }, yapoe yakiwa yamefunikwa.
if-high = Juu ya mita { $altitude } au milimani: { $wait }.
boiling-point = Kwenye mita { $altitude } maji huchemka kwa nyuzi { $celsius } C: moto wa kutosha kuua vijidudu vyote vya maji ya kunywa.
head-sun = Chupa angavu hadi { $size } kwenye jua: { $wait }.
head-sun-unsure = Chupa angavu hadi { $size }: { $sunny } ikiwa jua ni kali siku nzima, la sivyo { $wait }. Si wakati wa mvua.
head-sun-rain = Jua haliwezi kufanya maji kuwa salama wakati wa mvua. Chemsha, au tumia klorini. Au kinga maji safi ya mvua uyatibu.
fill-and-shake = Jaza robo tatu, tikisa, jazia, laza chupa.
head-filter = Chujio la { $pore } um{ $stops }{ $passes }.
head-filter-unknown = Chujio lisilojulikana tundu{ $stops }{ $passes }. Tafuta namba ya um juu yake.
filter-stops = { " " }linazuia { $list }
filter-passes-after-stops = ; halizuii { $list }
filter-passes-only = { " " }halizuii { $list }
reason-kills-all = Kuchemsha kunaua vijidudu vyote, hata maji ya tope na baridi.
reason-nothing-else = Ulivyotaja haviyafanyi salama; moto unaweza.
reason-only-one = Ndicho pekee ulichotaja kinachofaa hapa.
reason-two-barriers = Hatua mbili ni salama kuliko moja.
reason-widest-cover = Inazuia zaidi kuliko vingine ulivyo navyo.
head-choose = Bora hapa: { $first }.
head-choose-then = Bora hapa: { $first }. Ikiwa haiwezekani: { $second }.
head-choose-nothing = Bora: { $first }. Niambie ulicho nacho: blichi, vidonge, ayodini, chujio, jua.
method-pair = { $one }, kisha { $two }

organism-bacteria = bakteria
organism-viruses = virusi
organism-giardia = Giardia
organism-cryptosporidium = Cryptosporidium
organism-some = baadhi ya { $what }
list-two = { $one } na { $two }
list-two-or = { $one } au { $two }
list-more = { $one }, { $rest }

## Cautions: one short sentence each

caution-absolute-pore = Namba iwe absolute (au ya cyst), si nominal.
caution-bottle-size = Tumia chupa angavu za PET, si majagi ya kioo wala madumu makubwa.
caution-clean-tank-first = Safisha tanki kwanza; kamwe si lililobeba mafuta au maji taka.
caution-cool-and-dark = Weka penye ubaridi na giza.
caution-danger-signs = Damu, macho kuzama, hakuna mkojo, kulegea sana: kliniki sasa.
caution-fresh-daily = Tengeneza mpya kila siku.
caution-gloves-and-air = Vaa glavu, fungua milango, linda macho.
caution-keep-from-children = Weka mbali na watoto.
caution-keep-treating = Endelea kutibu maji ya kisima hadi kipimo kioneshe ni safi.
caution-let-stand = Kali mno? Acha wazi au mimina chombo hadi chombo safi.
caution-narrow-neck = Chombo chenye kifuniko na mdomo mwembamba, usiingize mikono.
caution-never-mix = Usichanganye kamwe na asidi au amonia: gesi.
caution-not-for-drinking = Si ya kunywa.
caution-not-until-pumped = Usinywe hadi maji yatolewe na kupimwa.
caution-rehydrate = ORS kidogo kidogo.
caution-retest-later = Pima tena baada ya kusubiri.
caution-stir-tank = Tia dawa tanki linapojazwa au koroga sana; funga bomba wakati wa kusubiri.
caution-tablet-too-strong = Kidonge kimoja ni kikali mno kwa maji haya: kitumie kwa maji mengi zaidi.
caution-well-clear-first = Kisima chenye tope: toa maji, yaache yaangae kwanza.
caution-well-ph = Kwa pH hii klorini ya kisima haifanyi kazi vizuri: uliza ofisi ya maji.
caution-chemicals-stay = Kemikali na chumvi hubaki.
caution-cold-takes-longer = Muda zaidi kama ni baridi.
caution-cryptosporidium-survives = Cryptosporidium haifi.
caution-fresh-air = Gesi: toka nje kwenye hewa safi.
caution-giardia-partly = Giardia huenda isife.
caution-higher-boil-longer = Sehemu za juu: chemsha muda zaidi.
caution-iodine-unsuitable = Si kwa mjamzito, tezi ya shingo, mtoto mchanga, muda mrefu.
caution-leptospira-passes = Leptospira hupita.
caution-label-first = Lebo ikiwa na dozi ya maji ya kunywa, fuata hiyo.
caution-no-shorter-wait = Usipunguze muda wa kusubiri.
caution-medical-help = Pata msaada wa daktari sasa.
caution-no-vomiting = Usimtapishe.
caution-rinse-with-water = Osha kwa maji.
caution-not-in-rain = Si wakati wa mvua.
caution-old-bottle = Chupa yako ina zaidi ya mwaka: nunua mpya.
caution-pore-unknown = Tundu la chujio halijulikani: usilitegemee peke yake.
caution-smell-check = Baada ya kusubiri yanuke klorini kidogo; kama hayanuki, rudia dozi ile ile mara moja na subiri tena; bado hayanuki, usinywe.
caution-second-method = Tumia na njia ya pili pia.
caution-sewage = Maji taka: chemsha ikiwezekana kabisa.
caution-spores-survive = Mbegu za vijidudu sugu zinahitaji mvuke wa shinikizo: si kwa vifaa vya upasuaji.
caution-strain-first = Acha yatulie na chuja kwanza.
caution-print-test = Ni lazima uweze kusoma maandishi kupitia chupa iliyojaa.
caution-lower-figure = Nimechukua namba ya chini ya lebo.
caution-too-murky = Kama huwezi kusoma maandishi kupitia maji, yachemshe.
caution-unscented-only = Blichi ya kawaida tu, isiyo na manukato.
caution-viruses-pass = Virusi hupita: chemsha au tia klorini pia.
caution-weak-immunity-boil = Watoto wachanga au kinga dhaifu: chemsha.
caution-two-days = Huna hakika na jua? Acha siku zote mbili.

extra-lower-figure = Namba ya chini ya lebo.
extra-old-bottle = Chupa ya zamani: nunua mpya.
extra-see-health-worker = Wagonjwa wanahitaji mhudumu wa afya na ORS sasa.

covers = Inaua: bakteria { $bacteria }, virusi { $viruses }, Giardia { $giardia }, Cryptosporidium { $cryptosporidium }.
boil-kills-all = Kuchemsha kunaua vyote.
cover-yes = ndiyo
cover-partly = kiasi
cover-no = hapana
defer = Kanuni za ofisi yako ya afya hutangulia.

## Changed doses

adjusted-faster = { $echo }. Tu ikiwa safi na si baridi: { $measure } kwa jumla, subiri { $wait }. Ladha zaidi, si usalama zaidi.
adjusted-weaker = { $echo }. Mara ijayo, tu ikiwa safi na si baridi: { $measure }, subiri { $wait }. Maji haya: acha wazi.
cannot-faster = Haiwezi kufupishwa kwa usalama. Haraka zaidi: chemsha hadi yatokote kwa nguvu, kisha poza.
of-solution = USINYWE KAMWE: ni ya usafi tu. Tengeneza mpya kila siku, funga, andika jina, mbali na watoto. Kwa maji ya kunywa tuma lita na % ya chupa.
too-strong = Klorini imezidi? Acha wazi masaa kadhaa au mimina chombo hadi chombo safi. Usipunguze kamwe kusubiri. Kama yamenywewa na mtu anaumwa: tafuta msaada.
cannot-weaker = Pungufu haitakuwa salama hapa. Kwa ladha: acha wazi, au mimina chombo hadi chombo safi, baada ya kusubiri.

## Questions

ask-product = Una dawa gani: blichi, vidonge vya klorini, klorini ya unga au ayodini?
ask-product-chlorine = Una klorini gani: blichi, calcium hypochlorite au unga wa blichi?
ask-product-unfit-for-well = Hiyo si ya kisima. Una blichi, calcium hypochlorite au unga wa blichi?
ask-product-unfit-for-cleaning = Hiyo si ya kazi hii. Una blichi, klorini ya unga au vidonge vya klorini?
ask-product-unfit-for-residual = Hiyo haiongezi klorini. Una blichi, klorini ya unga au vidonge vya klorini?
ask-product-unfit-for-supply = Inatosha kiasi gani imeandikwa kwenye lebo yake. Una dawa gani nyingine: blichi, klorini ya unga, vidonge vya klorini au ayodini?
ask-product-bleach-tablet = Vidonge hivyo vina nini? Tuma lebo inavyosema, pamoja na mg. Ni lazima viwe vya maji ya kunywa.
ask-product-chlorine-form = Klorini ni ya maji maji, unga au vidonge? Tuma pamoja na % au mg ya lebo.
ask-product-iodine-form = Ayodini gani: tincture, povidone-iodine au vidonge?
ask-product-pool = Klorini ya bwawa la kuogelea huenda ina kiimarishi: si ya maji ya kunywa. Una blichi ya kawaida, vidonge vya maji au ayodini? Kama huna, chemsha.
ask-product-powder-form = Unga gani: calcium hypochlorite au unga wa blichi? Tuma % ya lebo yake.
ask-product-spoiled = Blichi yenye manukato, nzito au ya rangi si ya maji ya kunywa. Una blichi ya kawaida, vidonge au ayodini? Kama huna, chemsha.
ask-product-tablet-form = Vidonge ni vya klorini au ayodini? Tuma jina na mg ya pakiti.
ask-product-two-products = Hizo ni dawa zaidi ya moja. Utatumia ipi?

ask-strength = Lebo ya { $product } ina % ngapi?
ask-strength-no-label = Bila % sitoi dozi. Je kuna chupa nyingine yenye lebo? Kama hakuna, chemsha hadi yatokote, kisha poza. Kama huna moto pia, andika: sina lebo sina moto.
ask-strength-degrees = Lebo ya { $product } ina % ngapi? Nyuzi (digrii) zina maana mbili.
ask-strength-denied = Basi ni % ngapi? Nisomee lebo ya { $product }.
ask-strength-bound = Lebo ya { $product } ina % ngapi hasa? "Chini ya" haitoshi kwa dozi.
ask-strength-guessed = Tafadhali angalia lebo ya { $product }: imeandikwa % ngapi?
ask-strength-outside = { $product } haiwi na nguvu hiyo. Lebo imeandikwa % ngapi?
ask-strength-is-target = Hiyo ni ya maji. Lebo ya { $product } imeandikwa % ngapi?
ask-strength-is-solution = Hiyo ni nguvu ya dawa ya usafi. Lebo ya { $product } imeandikwa % ngapi?
ask-strength-thinned = Nguvu ya { $product } iliyoongezwa maji haijulikani. Chupa isiyofunguliwa au isiyochanganywa ina % ngapi kwenye lebo? Kama hakuna, chemsha.
ask-strength-two = Namba mbili tofauti za %. Ipi imeandikwa kwenye lebo ya { $product }?
ask-strength-unreadable = Siwezi kusoma %. Tafadhali tuma tena, mfano: 3.5%
ask-strength-wide = Tofauti hiyo ni kubwa mno. Lebo ya { $product } ina % ngapi hasa?

ask-tablet = Kidonge kimoja ni mg ngapi? Imeandikwa kwenye pakiti au boksi.
ask-tablet-compound = Hiyo ni mg ya ayodini? Mara nyingi huandikwa ya mchanganyiko. Kidonge kimoja kinatoa mg ngapi za ayodini?
ask-tablet-two = Ukubwa mbili wa vidonge. Utatumia mg ipi?
ask-tablet-outside = Sijui kidonge cha maji ya kunywa cha namna hiyo. Pakiti imeandikwa mg ngapi?

ask-volume = Unataka kutibu lita ngapi za maji?
ask-volume-uncounted = Hizo ni lita ngapi kwa jumla?
ask-volume-unsized = Kinachukua lita ngapi? (ndoo na madumu hutofautiana)
ask-volume-outside = Siwezi kutumia kiasi hicho. Unataka kutibu lita ngapi za maji?
ask-volume-two = Kiasi cha maji zaidi ya kimoja. Unataka kutibu lita ngapi kwa mara moja?
ask-volume-unreadable = Siwezi kuwa na hakika na kiasi. Lita ngapi za maji? Tafadhali andika bila nukta, mfano: 1000 L

ask-volume-solution = Unataka kutengeneza lita ngapi za mchanganyiko?
ask-volume-tank = Kuna lita ngapi za maji ndani?
ask-jar = Kila ndoo au jagi ilikuwa na lita ngapi za maji?

ask-diameter = Kisima kina upana wa mita ngapi?
ask-diameter-outside = Siwezi kutumia upana huo. Kisima kina mita ngapi kutoka ukuta hadi ukuta?
ask-depth = Kina cha maji kisimani ni mita ngapi? Shusha jiwe kwa kamba, pima sehemu iliyolowa.
ask-well-depth-only = Hicho ni kina cha kisima. Kina cha MAJI ndani ni mita ngapi? Shusha jiwe kwa kamba, pima sehemu iliyolowa.
ask-water-depth-outside = Siwezi kutumia kina hicho. Maji kisimani ni mita ngapi?
ask-target = Iwe na nguvu gani? Mikono { $hands }%, sakafu { $floors }%, damu { $blood }%, matapishi au kinyesi cha kipindupindu { $stools }%. Ofisi ya afya huenda ikasema tofauti.
ask-target-outside = Siwezi kutumia nguvu hiyo. Mchanganyiko uwe % ngapi? Mikono { $hands }%, sakafu { $floors }%, damu { $blood }%.
ask-target-too-strong = { $product } yako ni dhaifu kuliko hiyo. Mchanganyiko uwe % ngapi? Mikono { $hands }%, sakafu { $floors }%, damu { $blood }%.
ask-residual = Kipimo kinaonyesha ngapi, kwa mg/L (au ppm)?
ask-people = Ni kwa watu wangapi?
ask-people-outside = Siwezi kutumia namba hiyo. Ni kwa watu wangapi?
ask-days = Kwa siku ngapi? (Au niambie una kiasi gani.)
ask-days-outside = Siwezi kutumia hiyo. Kwa siku ngapi?
ask-stock-liquid = Una { $product } lita ngapi? Au: kwa watu wangapi na siku ngapi?
ask-stock-powder = Una { $product } kilo au gramu ngapi? Au: kwa watu wangapi na siku ngapi?
ask-stock-tablets = Una vidonge vingapi? Au: kwa watu wangapi na siku ngapi?
ask-stock-outside = Siwezi kutumia kiasi hicho. Una { $product } kiasi gani?

last-resort = NJIA YA MWISHO, nguvu haijulikani: { $drops } kila lita, subiri { $wait }. Yanuke klorini kidogo; la sivyo rudia mara moja, subiri; bado hayanuki, usinywe.
last-resort-total = NJIA YA MWISHO, nguvu haijulikani: { $total } jumla ({ $drops }/lita), subiri { $wait }. Yanuke klorini; la sivyo rudia mara moja, subiri; yasiponuka, usinywe.

## No dose

refused-chemical = Sitoi dozi: klorini, ayodini, kuchemsha na chujio haviondoi mafuta, viuatilifu, taka wala chumvi. Usinywe. Tafuta maji mengine, ambia ofisi ya afya.
refused-iodine_unsuitable = Hapana ayodini kwa mjamzito, tezi ya shingo, mtoto mchanga au zaidi ya wiki chache. Badala yake chemsha, au tumia blichi ya kawaida: tuma % na lita.
refused-mixed = HATARI: usichanganye kamwe blichi na asidi, siki, amonia au dawa za usafi: gesi ya sumu. Fungua milango, toka nje. Tumia blichi ya kawaida na maji tu.
refused-other_use = Najibu kuhusu maji ya kunywa na usafi tu. Vidonda, macho, dialysis, samaki, bwawa la kuogelea, kufua au chakula: uliza mhudumu wa afya.
refused-over_limit = Zaidi ya mara mbili ya dozi si salama kunywa.

## Somebody hurt or ill

first-aid = PATA MSAADA WA DAKTARI SASA. Amemeza: suuza mdomo, anywe maji kidogo akiwa macho, usimtapishe KAMWE. Jicho, ngozi: osha { $rinse } kwa maji. Gesi: hewa safi.
first-aid-powder = PATA DAKTARI SASA. Amemeza: suuza mdomo, maji kidogo akiwa macho, usimtapishe KAMWE. Ngozi: pangusa unga. Jicho, ngozi: osha { $rinse }. Gesi: hewa safi.
# Before first aid, where the deployment names a number to call.
help-line = Piga { $number }.
first-aid-then = Kisha uliza tena.
unsure = Amemeza au imemrukia? Basi suuza, usimtapishe KAMWE, pata daktari. Kama unataka dozi tu, tuma dawa, % na lita pekee.
illness = Mpe ORS kidogo kidogo, endelea kunyonyesha. Kliniki SASA kama kuna damu, macho kuzama, hakuna mkojo, kulegea sana au hawezi kunywa. Siwezi kutambua ugonjwa.
illness-danger = KLINIKI SASA. Usimpe kitu mdomoni akizimia au hawezi kumeza. Akiwa macho: ORS kidogo kidogo njiani, endelea kunyonyesha. Siwezi kutambua ugonjwa.
illness-feeding = Changanya ORS kama pakiti inavyosema, kwa maji salama. Endelea kumpa chakula.
illness-water = Tibu maji yote ya kunywa sasa, nawa mikono kwa sabuni, ambia ofisi ya afya kama wanaumwa zaidi ya mmoja.

## Service

kept = Nimekumbuka: { $product }{ $label }. Sasa tuma lita tu.
kept-part = Nimekumbuka: { $product }. Lebo yake ina % au mg ngapi? Tuma: { $product } yangu ni ...
kept-figure = Nimekumbuka:{ $label }. Ni dawa gani?
not-kept = Sikuhifadhi hiyo: sina hakika na dawa na nguvu yake. Tuma hivi: kumbuka blichi 5%
kept-opened = Ilifunguliwa { $date }.
kept-future = { $date } bado haijafika. Ilifunguliwa lini? Tuma hivi: ilifunguliwa 1 Machi 2026.
bottle = { $bottle }.
bottles = Nakumbuka: { $list }
bottles-none = Sikumbuki chupa yako yoyote. Tuma hivi: kumbuka blichi 5%, lita 1
left = Imebaki: { $amount }, inatibu { $litres }.
left-amount = Imebaki: { $amount }.
left-days = Kwa matumizi yako { $days }: tafuta nyingine sasa.
left-short = Kwa hesabu yangu chupa yako imebaki { $amount } tu.
left-empty = Kwa hesabu yangu imekwisha sasa: tafuta nyingine.
age-soon = Itumie mapema: inakaa miezi { $months }.
age-now = Ina zaidi ya miezi { $months }: nunua mpya.
age-estimate = Makadirio: imebaki kama { $percent }% ya nguvu yake ikiwekwa nyuzi { $celsius } C. Dozi haihesabu hilo: angalia harufu.
undone = Haijahesabiwa. { $left }
nothing-to-undo = Leo sijahesabu dozi yako yoyote.
will-remind = Nitakuandikia baada ya { $wait }.
nothing-to-wait-for = Hakuna muda wa kusubiri wa kukumbusha. Kwanza omba dozi.
reminder-chlorine = { $wait } zimeisha. Maji yalikuwa machafu au baridi? Basi subiri zaidi. Nusa: klorini kidogo, tayari. Hakuna harufu: rudia dozi ile ile mara moja, subiri tena.
reminder-disinfectant = { $wait } zimeisha: tayari kunywa. Kama maji yalikuwa machafu au baridi, subiri zaidi.
reminder-retest = { $wait } zimeisha: pima klorini tena kabla mtu yeyote hajanywa.
reminder-sun = { $wait } zimeisha. Kama jua lilikuwa kali, tayari kunywa; kama halikuwa, acha zaidi.
reminder-surface = { $wait } zimeisha: suuza sehemu hiyo.
reminder-well = { $wait } zimeisha: toa maji ya kisima, kisha pima. Mtu yeyote ASINYWE kabla.
seen = Swali lako lingine ({ $topic }): litume peke yake.
topic-boil = kuchemsha
topic-dose = dozi
topic-dilute = usafi
topic-storage = kuhifadhi
topic-well = kisima
topic-why = kwanini
set-language = Lugha imewekwa: { $language }.
set-language-unknown = Sijui { $language } bado. Naendelea kwa Kiswahili.
set-units-metric = Vipimo vimewekwa: lita na ml.
set-units-us = Vipimo vimewekwa: galoni za US.
set-units-imperial = Vipimo vimewekwa: galoni za UK.
help = Tuma dawa, % ya lebo, lita. Mfano: lita 20 machafu, blichi 5%. Uliza pia: kuchemsha, kisima, usafi, kipimo, akiba, kuhifadhi, ZAIDI, KWANINI, ACHA, NISAHAU.
greeting = matone inaeleza jinsi ya kufanya maji kuwa salama. Tuma dawa, % na lita, mfano: lita 20 machafu, blichi 5%. Au MSAADA.
stopped = Imesitishwa: hakuna ujumbe usioomba. Maswali yako bado yanajibiwa. ANZA kuanza tena.
started = Ujumbe umewashwa. Tuma dawa, % na lita, mfano: lita 20 machafu, blichi 5%. Au MSAADA.
dropped = Sikumbuki tena { $product } yako.
forgotten = Yote yaliyohifadhiwa kukuhusu yamefutwa.
not-understood = Sikuelewa. Tuma dawa, % na lita, mfano: lita 20 machafu, blichi 5%. Au MSAADA.
nothing-before = Kwanza omba dozi. Tuma dawa, % na lita, mfano: lita 20 machafu, blichi 5%.
nothing-more = Hayo ndiyo yote. KWANINI inatoa vyanzo.
why = { $dose }{ $wait }{ $logs } Vyanzo: { $sources }.
why-dose = Inaleta { $mg } mg/L.
why-wait-rule = { " " }Muda: kanuni iliyochapishwa.
why-wait-unknown = { " " }Muda: kanuni iliyochapishwa, joto halijulikani.
why-wait-cold = { " " }Muda: zaidi kwa maji baridi.
why-wait-ct = { " " }Muda: contact time { $reached } kati ya { $needed } mg.min/L zinazohitajika, kwa { $residual } mg/L.
why-logs = { " " }Nyuzi { $celsius } C, pH { $ph }, { $residual } mg/L: contact time { $reached } kati ya { $needed } mg.min/L; virusi { $viruses } log, Giardia { $giardia } log, Cryptosporidium hakuna.
why-boil = Mashirika mengine yanataka kuchemsha muda mrefu sehemu za juu tu, na shirika la dunia hadi yatokote tu: nafuata kanuni kali zaidi.
source-published = { $title } ({ $publisher }, { $year })
source-undated = { $title } ({ $publisher })
source-memory = { $title } ({ $publisher }; kwa kumbukumbu)
source-common = desturi ya kawaida bila chanzo

## The printed chart: read from a wall, so no message of it has to fit an SMS

chart-title = Blichi kiasi gani hufanya maji kuwa salama
chart-caption = Tia kiasi hiki cha blichi ya kawaida ya maji maji. % lazima iwe ile iliyo kwenye chupa yako.
chart-water = Maji
chart-bottle = Blichi { $percent }%
chart-clear = Safi
chart-cloudy-or-cold = Machafu au baridi
chart-imperial-quarts = kwati { $value } za UK
chart-teaspoons = vijiko vya chai { $spoons }
chart-tablespoons = vijiko vya chakula { $spoons }
chart-or = au { $way }
chart-then-wait = Kisha subiri
chart-wait-if-cold = baridi: { $wait }
chart-legend = Pima kwa njia moja tu: matone, ml au vijiko. Kijiko cha chai: kilichojaa sawasawa, bila kilima. Kijiko cha chakula: kilichojaa sawasawa, bila kilima. Baridi: baridi kwa mkono.

chart-step-add = Tafuta maji yako kwenye jedwali. Tia kiasi hicho cha blichi na ukoroge.
chart-step-wait = Subiri muda ulioandikwa kwenye mstari wa mwisho. Mtu yeyote asinywe kabla.
chart-survive = Blichi haiui { $list }.
chart-may-survive = { $list } huenda isife.

chart-caution-chemicals-stay = Blichi haiondoi mafuta, viuatilifu, taka wala chumvi: tafuta maji mengine.
chart-caution-keep-from-children = Weka blichi mbali na watoto.
chart-caution-label-first = Chupa ikiwa na maelekezo ya maji ya kunywa, fuata hayo.
chart-caution-never-mix = Usichanganye kamwe na asidi au amonia: gesi.
chart-caution-old-bottle = Tumia chupa isiyozidi mwaka mmoja.
chart-caution-smell-check = Nusa maji. Lazima yanuke klorini kidogo. Kama hayanuki, ongeza kiasi kile kile mara moja tena na usubiri tena. Kama bado hayanuki, usiyanywe.
chart-caution-strain-first = Maji machafu: acha yatulie, kisha yachuje kwa kitambaa safi.
chart-caution-too-murky = Maji machafu kiasi kwamba huwezi kusoma maandishi kupitia kwake: usitumie blichi, yachemshe.
chart-caution-unscented-only = Blichi ya kawaida tu: isiyo na manukato, isiyo na rangi, si nzito, isiyo na dawa nyingine ya usafi ndani.
chart-caution-weak-immunity-boil = Kwa watoto wachanga na watu wenye kinga dhaifu: badala yake chemsha maji.

chart-sources = Vyanzo: { $sources }.
chart-printed = Imechapishwa { $year }-{ $month }-{ $day }.

## Terminal and command line

terminal-greeting = matone: jinsi ya kufanya maji uliyonayo kuwa salama kunywa. Kwanza fuata ofisi yako ya afya.
terminal-examples = Jaribu:  galoni 2 machafu blichi 1%  |  nichemshe muda gani kwenye mita 2400  |  kumbuka blichi yangu ni 5%
terminal-bye = Kaa salama.
