# What matone says in Spanish (Latin America), usted form.
#
# GSM-7: the acute accents of a, i, o, u are left out; é, ñ and the opening signs are kept. The
# chart is for print and is written in full.

## Names

product-bleach = cloro liquido
product-bleaching_powder = cal clorada
product-calcium_hypochlorite = hipoclorito de calcio
product-chlorine_dioxide = dioxido de cloro
product-iodine_tablet = pastillas de yodo
product-iodine_tincture = tintura de yodo
product-nadcc = pastillas de cloro
product-povidone_iodine = yodo povidona

method-fire = hervir
method-filter = un filtro
method-sunlight = sol en botellas claras

product-any = cloro

clarity-clear = { " " }clara
clarity-cloudy = { " " }turbia
# Said where the answer has no room for cloudy water and takes the water for clear.
clarity-assumed = { " " }si es clara
warmth-cold = { " " }fria
warmth-celsius = { " " }a { $celsius } C

## Measures

volume-litres = { $value } L
volume-us-gallons = { $value } gal US
volume-us-quarts = { $value } qt US
volume-imperial-gallons = { $value } gal imp
label-percent = { " " }{ $value }%
label-mg = { " " }{ $value } mg

drops = { $drops-n ->
    [one] { $drops } gota
   *[other] { $drops } gotas
}
measure-drops = { $drops } ({ $ml } mL)
measure-ml = { $ml } mL
measure-ml-teaspoon = { $ml } mL ({ $spoons } cdta)
measure-ml-tablespoon = { $ml } mL ({ $spoons } cda)
measure-later = Eso es { $measure }.
tablets = { $count-n ->
    [one] { $count } pastilla
   *[other] { $count } pastillas
}
grams = { $grams } g
kilograms = { $kilograms } kg
metres = { $metres } m
minutes = { $value } min
hours = { $value } h
days = { $value } dias
days-n = { $days-n ->
    [one] { $value } dia
   *[other] { $value } dias
}

## A dose

echo = { $volume }{ $clarity }{ $warmth }, { $product }{ $label }
echo-remembered = { $volume }{ $clarity }{ $warmth }, su { $product }{ $label }
head-liquid = { $echo }: eche { $measure }, mezcle, espere { $wait }.
head-liquid-cloudy = { $echo }: asiente, cuele, { $measure }, mezcle, espere { $wait }.
head-tablets = { $echo }: { $measure }, mezcle, espere { $wait }.
head-tablets-cloudy = { $echo }: asiente, cuele, { $measure }, mezcle, espere { $wait }.
head-powder = { $echo }: disuelva { $measure } en un balde de agua, agréguelo, mezcle, espere { $wait }.
head-powder-cloudy = { $echo }: asiente, cuele. Disuelva { $measure } en un balde de agua, agréguelo, mezcle, espere { $wait }.
head-stock = { $echo }: { $grams } con agua hasta { $litres } = solucion al { $percent }%. Eche { $measure } de ella, mezcle, espere { $wait }.
head-stock-cloudy = { $echo }: asiente, cuele. { $grams } con agua hasta { $litres } = solucion al { $percent }%. Eche { $measure }, mezcle, espere { $wait }.
head-label = { $echo }: eche lo que su etiqueta dice para esta agua, mezcle, espere { $wait }.
head-label-cloudy = { $echo }: asiente, cuele, eche lo de su etiqueta, mezcle, espere { $wait }.

if-cloudy-or-cold = Turbia: { $measure }, { $wait }; fria: igual, { $coldwait }.
head-new-tank = { $echo }. Tanque nuevo o sucio: antes restrieguelo, llénelo, eche { $measure }, deje { $wait }, vacielo. Luego la dosis.
if-new-tank = Tanque nuevo o sucio: restrieguelo, llénelo, eche { $measure }, deje { $wait }, vacielo; luego la dosis.
if-cloudy-or-cold-same = Turbia o fria: { $measure }, { $wait }.
if-cloudy = Turbia: cuele, { $measure }, { $wait }.
if-cold = Fria: { $measure }, { $wait }.
if-cold-wait = Fria: espere { $wait }.

more-hint = MAS
# Words that people may send next; each is one that the lexicon reads.
next-why = POR QUE
next-remind = RECUERDEME
next-help = AYUDA

## Wells

head-well = Pozo { $across } de ancho, { $depth } de agua ({ $volume }): { $measure } { $product } en baldes, vierta, mezcle, deje { $wait }. NO BEBER hasta bombear a { $ready } mg/L.
head-well-cloudy = Pozo { $across }, agua { $depth }, { $volume }: vacielo, deje aclarar. { $measure } { $product } en baldes, vierta, mezcle, deje { $wait }. NO BEBER hasta bombear a { $ready } mg/L.
well-wall = Antes cepille la pared con { $ml } del producto en { $litres } de agua.
well-wall-stock = Antes cepille la pared con { $ml } de solucion al { $percent }% en { $litres } de agua.
well-hurry = Un pozo necesita { $wait }. Solo en emergencia { $emergency }, luego bombear y medir. Nadie bebe antes.
well-emergency = Solo en emergencia: { $wait } en su lugar.

## Solutions for hands, cleaning and stock

head-dilute-liquid = { $volume } al { $target }%: { $measure } de { $product } + { $water } de agua (una parte + { $parts } partes de agua).
head-dilute-as-is = { $volume } al { $target }%: use { $product } tal cual, no le eche agua.
head-dilute-tablets = { $volume } al { $target }%: { $count } { $product } ({ $per } en cada litro), complete con agua hasta { $volume }.
head-dilute-made-up = { $volume } al { $target }%: { $measure } de { $product } ({ $per } en cada litro), complete con agua hasta { $volume }.
dilute-hands = Para manos: no para ojos, no beber.
dilute-surfaces = Deje mojada la superficie { $wait }, luego enjuague. No beber.
dilute-stock = Prepare nueva cada dia. No beberla asi.
dilute-any-volume = Para cualquier cantidad: una parte + { $parts } partes de agua.

## Chlorine tests

residual-enough = { $reading } mg/L basta (minimo { $least }). Mantenga tapada el agua y bébala en { $keeps }.
residual-enough-at-use = { $reading } mg/L. { $retest } tras la dosis: no basta (minimo { $aim }), no beber. En el envase del que se bebe, hasta { $keeps }: basta (minimo { $atuse }). ¿Cual es?
residual-low = { $reading } mg/L no basta, minimo { $aim }. No la beba aun: eche cloro, espere { $retest }, mida otra vez. Para la cantidad mande litros, producto y %.
residual-add = { $reading } mg/L no basta. A { $volume } eche { $measure } de { $product }, mezcle, espere { $wait }, mida otra vez: minimo { $aim } mg/L antes de que alguien beba.
residual-add-zero = { $reading } mg/L. ¿Nunca le echo cloro? Pida la dosis. Si ya: a { $volume } eche { $measure } de { $product }, mezcle, espere { $wait }, mida: { $aim } mg/L antes de beber.
residual-add-stock = { $reading } mg/L no basta. { $grams } de { $product } con agua hasta { $litre } = solucion al { $percent }%: a { $volume } eche { $measure } de ella, espere { $wait }, mida: minimo { $aim } mg/L.
residual-add-zero-stock = { $reading } mg/L. ¿Nunca le echo cloro? Pida la dosis. Si ya: { $grams } de { $product } con agua hasta { $litre } = { $percent }%; a { $volume } eche { $measure }, espere { $wait }, mida.
residual-too-early = { $reading } mg/L, pero aun es pronto para saber. Mida otra vez { $retest } tras la dosis: minimo { $aim } mg/L.
residual-high = { $reading } mg/L es mas que para diario (maximo { $most }). Déjela abierta o pasela entre envases limpios, mida otra vez.
residual-too-high = { $reading } mg/L es demasiado: no la beba aun. Déjela abierta o pasela entre envases limpios hasta { $most } mg/L o menos.
residual-stale = { $reading } mg/L, y tratada hace mas de { $keeps }: tratela de nuevo antes de beber.
residual-no-kit = Sin medidor: { $retest } tras la dosis debe oler un poco a cloro. Sin olor: la misma dosis una vez mas, espere { $retest }. Si sigue sin olor: no la beba.
residual-already-dosed = Ya tiene dosis: no eche mas ahora. { $retest } tras la dosis debe oler un poco a cloro. Si huele fuerte o se echo de mas: no la beba, use agua nueva.
residual-still-no-smell = Sigue sin olor: no la beba y no eche mas. Hiérvala, o busque agua mas clara y déle dosis nueva.
residual-no-smell = Sin olor: la misma dosis una vez mas, espere { $retest }, huela otra vez. Si sigue sin olor a cloro: no la beba. Hiérvala o busque agua mas clara.
residual-smells = Un leve olor a cloro tras la espera es bueno: bébala. Si es fuerte, déjela abierta o pasela entre envases limpios.
residual-well-not-ready = { $reading } mg/L: el pozo no esta listo. NO BEBER. Siga bombeando hasta { $ready } mg/L o menos; luego trate esa agua antes de beber hasta que el analisis salga limpio.
residual-well-ready = { $reading } mg/L: ya se bombeo bastante ({ $ready } o menos). Siga tratando el agua del pozo antes de beber hasta que el analisis salga limpio.
residual-zero = ¿Otra vez cero? El agua se come el cloro: asiente y cuele, o ensaye dosis en baldes (prueba de jarras).

## Jar test

jar-found = Prueba de jarras: { $dose } en { $jar } deja { $aim } mg/L. Son { $each } de la misma solucion por cada { $thousand }. Mande los litros del tanque y le doy su dosis.
jar-found-tank = Prueba de jarras: { $dose } en { $jar } deja { $aim } mg/L. Para { $tank }: { $measure } de la misma solucion, mezcle, espere { $wait }, mida otra vez.
jar-all-above = Todas las jarras pasan de { $aim } mg/L: repita la prueba con menos en cada { $jar }.
jar-all-below = Ninguna jarra llego a { $aim } mg/L: repita la prueba con mas en cada { $jar }.
jar-how-to = Prueba de jarras: { $doses } mL de solucion al { $percent }% en cuatro baldes de { $jar }, mezcle, espere { $wait }, mida. Mande mL y lectura de cada uno. Meta: { $aim } mg/L.
jar-uneven = Mas solucion debe dejar mas cloro; estas lecturas suben y bajan. Repita la prueba de jarras, por favor.

## Stock and people

people = { $people-n ->
    [one] { $people } persona
   *[other] { $people } personas
}
supply-clear-water = agua clara
supply-cloudy-water = agua turbia
stock-counted = { $count } { $product }
stock-measured = { $amount } de { $product }
supply-treats = { $stock }: tratan unos { $litres } de { $water }.
supply-lasts = { $stock }: unos { $days } para { $people } con { $each } por persona al dia ({ $drinkingdays } si es solo para beber, { $drinking }).
supply-serves = { $stock }: unas { $people } por { $days } con { $each } por persona al dia ({ $drinkingpeople } si es solo para beber, { $drinking }).
supply-needs = { $people }, { $days }, { $each } por persona al dia = { $litres } de { $water }: { $need }. Pida { $measure } ({ $margin }% de sobra).
supply-counted-cloudy = Contado para agua turbia.
supply-ages = Pero dura solo { $months } meses.
supply-if-cloudy = El agua turbia gasta el doble.

## Keeping

storage-water = Guarde el agua tratada tapada, en envase limpio de boca angosta. Sirva vertiendo, con llave o cucharon: sin manos. Bébala en { $keeps }; luego tratela de nuevo.
storage-hands = Si entro una mano, o una taza sucia, tratela de nuevo.
storage-rinse = Enjuague el envase antes de llenar: { $ml } de cloro liquido en { $litre } de agua, { $seconds } segundos.
storage-product = Guarde { $product } cerrado, fresco y oscuro, lejos de niños, de acidos y de otros limpiadores. Cambielo a los { $months } meses.
storage-product-by-pack = Guarde { $product } cerrado, fresco, seco y oscuro, lejos de niños. No lo use tras la fecha del envase.

## Boiling, sun, filters

head-boil = Hierva a borbotones, siga hirviendo { $wait }, deje enfriar tapada.
head-boil-cloudy = Deje asentar y cuele, hierva a borbotones, siga hirviendo { $wait }, deje enfriar tapada.
if-high = Arriba de { $altitude } m o en montaña: { $wait }.
boiling-point = A { $altitude } m el agua hierve a { $celsius } C: basta para matar todo microbio del agua de beber.
head-sun = Botellas claras hasta { $size } al sol: { $wait }.
head-sun-unsure = Botellas claras hasta { $size }: { $sunny } si hay buen sol todo el dia; si no, { $wait }. No con lluvia.
head-sun-rain = El sol no vuelve segura el agua cuando llueve. Hierva o use cloro. O junte agua limpia de lluvia y tratela.
fill-and-shake = Llene tres cuartos, agite, complete, acuéstelas.
head-filter = Un filtro de { $pore } um{ $stops }{ $passes }.
head-filter-unknown = Un filtro de poro desconocido{ $stops }{ $passes }. Busque en él la cifra en um.
filter-stops = { " " }detiene { $list }
filter-passes-after-stops = ; no { $list }
filter-passes-only = { " " }no detiene { $list }
reason-kills-all = Hervir mata todo microbio, también en agua turbia y fria.
reason-nothing-else = Nada de lo que tiene la vuelve segura: hace falta fuego.
reason-only-one = De lo que tiene, es lo unico que sirve aqui.
reason-two-barriers = Dos pasos son mas seguros que uno.
reason-widest-cover = De lo que tiene, es lo que mas detiene.
head-choose = Mejor aqui: { $first }.
head-choose-then = Mejor aqui: { $first }. Si no se puede: { $second }.
head-choose-nothing = Lo mejor: { $first }. Diga qué tiene: cloro, pastillas, yodo, un filtro, sol.
method-pair = { $one }, luego { $two }

organism-bacteria = bacterias
organism-viruses = virus
organism-giardia = Giardia
organism-cryptosporidium = Cryptosporidium
organism-some = parte de { $what }
list-two = { $one } y { $two }
list-two-or = { $one } ni { $two }
list-more = { $one }, { $rest }

## Cautions: one short sentence each

caution-absolute-pore = La cifra debe ser absoluta (o para quistes), no nominal.
caution-bottle-size = Use botellas PET claras, no garrafas de vidrio ni bidones.
caution-clean-tank-first = Limpie antes el tanque; nunca uno que tuvo combustible o aguas negras.
caution-cool-and-dark = Fresco y oscuro.
caution-danger-signs = Sangre, ojos hundidos, sin orina, muy débil: al centro de salud ya.
caution-fresh-daily = Prepare nueva cada dia.
caution-gloves-and-air = Guantes, puertas abiertas, cuide los ojos.
caution-keep-from-children = Lejos de niños.
caution-keep-treating = Siga tratando el agua del pozo hasta que el analisis salga limpio.
caution-let-stand = ¿Muy fuerte? Déjela abierta o pasela entre envases limpios.
caution-narrow-neck = Envase tapado, boca angosta, sin manos.
caution-never-mix = Nunca mezcle con acido o amoniaco: gas.
caution-not-for-drinking = No beber.
caution-not-until-pumped = No beber hasta bombear y medir.
caution-rehydrate = Suero oral a sorbitos.
caution-retest-later = Mida otra vez tras la espera.
caution-stir-tank = Eche al llenar o mezcle bien; llaves cerradas en la espera.
caution-tablet-too-strong = Una pastilla es demasiado: trate mas agua con ella.
caution-well-clear-first = Pozo turbio: vacielo y deje que aclare antes.
caution-well-ph = Con este pH la cloracion de choque sirve mal: pregunte a la oficina de agua.
caution-chemicals-stay = Quimicos y sal quedan.
caution-cold-takes-longer = Mas tiempo si esta fria.
caution-cryptosporidium-survives = Cryptosporidium sobrevive.
caution-fresh-air = Gas: salga al aire libre.
caution-giardia-partly = Giardia puede sobrevivir.
caution-higher-boil-longer = En altura: hierva mas.
caution-iodine-unsuitable = No para embarazo, mal de tiroides, bebés, uso largo.
caution-leptospira-passes = Leptospira lo atraviesa.
caution-label-first = Si su etiqueta da dosis para agua de beber, siga esa.
caution-no-shorter-wait = No acorte la espera.
caution-medical-help = Busque ayuda médica ya.
caution-no-vomiting = No haga vomitar.
caution-rinse-with-water = Enjuague con agua.
caution-not-in-rain = No con lluvia.
caution-old-bottle = Su botella tiene mas de un año: consiga nueva.
caution-pore-unknown = Poro desconocido: no confie solo en él.
caution-smell-check = Tras la espera debe oler un poco a cloro; si no, la misma dosis una vez mas y espere otra vez; si aun no huele, no la beba.
caution-second-method = Use también un segundo método.
caution-sewage = Aguas negras: hierva si hay modo.
caution-spores-survive = Esporas resistentes piden presion: no para instrumentos estériles.
caution-strain-first = Antes deje asentar y cuele.
caution-print-test = Debe poder leer letra impresa a través de la botella llena.
caution-lower-figure = Tomé la cifra menor de la etiqueta.
caution-too-murky = Si no puede leer letra impresa a través, hierva.
caution-unscented-only = Solo cloro sin aroma ni aditivos.
caution-viruses-pass = Los virus pasan: hierva o clore también.
caution-weak-immunity-boil = Bebés o defensas bajas: hierva.
caution-two-days = ¿Duda del sol? Déjelas ambos dias.

extra-lower-figure = Tomé la cifra menor.
extra-old-bottle = Botella vieja: consiga nueva.
extra-see-health-worker = El enfermo necesita ya personal de salud y suero oral.

covers = Mata: bacterias { $bacteria }, virus { $viruses }, Giardia { $giardia }, Cryptosporidium { $cryptosporidium }.
boil-kills-all = Hervir los mata todos.
cover-yes = si
cover-partly = en parte
cover-no = no
defer = Primero valen las reglas de su centro de salud.

## Changed doses

adjusted-faster = { $echo }. Solo si es clara y no fria: { $measure } en total, espere { $wait }. Mas sabor, no mas seguridad.
adjusted-weaker = { $echo }. La proxima vez, solo si es clara y no fria: { $measure }, espere { $wait }. Esta agua: déjela abierta.
cannot-faster = No se puede acortar sin peligro. Mas rapido: hervir a borbotones y enfriar.
of-solution = NUNCA la beba: es solo para limpiar. Prepare nueva cada dia, cerrada, con etiqueta, lejos de niños. Para agua de beber mande litros y % de la botella.
too-strong = ¿Demasiado cloro? Déjela abierta unas horas o pasela entre envases limpios. Nunca acorte la espera. Si alguien bebio y se siente mal: pida ayuda.
cannot-weaker = Menos no seria seguro aqui. Por el sabor: déjela abierta o pasela entre envases limpios, tras la espera.

## Questions

ask-product = ¿Qué producto tiene: cloro liquido, pastillas de cloro, cloro en polvo o yodo?
ask-product-chlorine = ¿Qué cloro tiene: cloro liquido, hipoclorito de calcio o cal clorada?
ask-product-unfit-for-well = Eso no es para pozos. ¿Tiene cloro liquido, hipoclorito de calcio o cal clorada?
ask-product-unfit-for-cleaning = Eso no es para esto. ¿Tiene cloro liquido, cloro en polvo o pastillas de cloro?
ask-product-unfit-for-residual = Eso no sube el cloro. ¿Tiene cloro liquido, cloro en polvo o pastillas de cloro?
ask-product-unfit-for-supply = Cuanto rinde eso lo dice su etiqueta. ¿Qué otro producto tiene: cloro liquido, cloro en polvo, pastillas de cloro o yodo?
ask-product-bleach-tablet = ¿Qué contienen esas pastillas? Mande lo que dice la etiqueta, con los mg. Deben ser para agua de beber.
ask-product-chlorine-form = ¿El cloro es liquido, polvo o pastillas? Mandelo con el % o los mg de la etiqueta.
ask-product-iodine-form = ¿Qué yodo es: tintura, yodo povidona o pastillas?
ask-product-pool = El cloro de piscina puede ser estabilizado: no es para agua de beber. ¿Tiene cloro liquido simple, pastillas para agua o yodo? Si no, hierva.
ask-product-powder-form = ¿Qué polvo: hipoclorito de calcio o cal clorada? Mande el % de la etiqueta.
ask-product-spoiled = Cloro con aroma, espeso o con color no es para agua de beber. ¿Tiene cloro simple, pastillas o yodo? Si no, hierva.
ask-product-tablet-form = ¿Las pastillas son de cloro o de yodo? Mande el nombre y los mg del sobre.
ask-product-two-products = Es mas de un producto. ¿Cual va a usar?

ask-strength = ¿Qué % dice la etiqueta de { $product }?
ask-strength-no-label = Sin el % no doy dosis. ¿Hay otra botella con etiqueta? Si no, hierva a borbotones y enfrie. Si tampoco tiene fuego, diga: sin etiqueta sin fuego.
ask-strength-degrees = ¿Qué % dice la etiqueta de { $product }? Los grados pueden ser dos cosas.
ask-strength-denied = ¿Entonces qué % es? Lea la etiqueta de { $product }.
ask-strength-bound = ¿Qué % exacto dice la etiqueta de { $product }? "Menos de" no basta para una dosis.
ask-strength-guessed = Mire la etiqueta de { $product }: ¿qué % tiene impreso?
ask-strength-outside = { $product } no viene con ese %. ¿Qué % dice la etiqueta?
ask-strength-is-target = Ese % es el del agua. ¿Qué % dice la etiqueta de { $product }?
ask-strength-is-solution = Ese % es para limpieza. ¿Qué % dice la etiqueta de { $product }?
ask-strength-thinned = { $product } rebajado no tiene fuerza conocida. ¿Qué % dice la etiqueta de una botella sin abrir o sin mezclar? Si no hay ninguna, hierva.
ask-strength-two = Dos % distintos. ¿Cual esta impreso en la etiqueta de { $product }?
ask-strength-unreadable = No puedo leer el %. Mandelo otra vez, asi: 3,5%
ask-strength-wide = Ese rango es muy amplio. ¿Qué % exacto dice la etiqueta de { $product }?

ask-tablet = ¿De cuantos mg es una pastilla? Lo dice el sobre o la caja.
ask-tablet-compound = ¿Son los mg de yodo? Muchas veces dicen los del compuesto. ¿Cuantos mg de yodo suelta una pastilla?
ask-tablet-two = Dos tamaños de pastilla. ¿La de cuantos mg va a usar?
ask-tablet-outside = No conozco pastilla asi para agua de beber. ¿Cuantos mg dice el sobre?

ask-volume = ¿Cuantos litros de agua quiere tratar?
ask-volume-uncounted = ¿Cuantos litros son en total?
ask-volume-unsized = ¿Cuantos litros le caben? (baldes y bidones varian)
ask-volume-outside = No puedo usar esa cantidad. ¿Cuantos litros de agua quiere tratar?
ask-volume-two = Es mas de una cantidad de agua. ¿Cuantos litros quiere tratar de una vez?
ask-volume-unreadable = No estoy seguro de la cantidad. ¿Cuantos litros de agua? Escriba sin puntos, asi: 1000 L

ask-volume-solution = ¿Cuantos litros de la solucion quiere preparar?
ask-volume-tank = ¿Cuantos litros de agua hay dentro?
ask-jar = ¿Cuantos litros de agua habia en cada jarra o balde?

ask-diameter = ¿Cuantos metros de ancho tiene el pozo?
ask-diameter-outside = No puedo usar ese ancho. ¿Cuantos metros de ancho tiene el pozo?
ask-depth = ¿Cuantos metros de agua hay en el pozo? Baje una piedra con soga y mida la parte mojada.
ask-well-depth-only = Eso es el pozo. ¿Cuantos metros de AGUA tiene? Baje una piedra con soga y mida la parte mojada.
ask-water-depth-outside = No puedo usar esa profundidad. ¿Cuantos metros de agua hay en el pozo?
ask-target = ¿De qué % debe ser? Manos { $hands }%, pisos { $floors }%, sangre { $blood }%, vomito o heces de colera { $stools }%. Su centro de salud puede decir otro.
ask-target-outside = No puedo usar ese %. ¿De cuanto % debe ser la solucion? Manos { $hands }%, pisos { $floors }%, sangre { $blood }%.
ask-target-too-strong = Su { $product } es mas débil que eso. ¿De cuanto % debe ser la solucion? Manos { $hands }%, pisos { $floors }%, sangre { $blood }%.
ask-residual = ¿Qué marca la prueba, en mg/L (o ppm)?
ask-people = ¿Para cuantas personas es?
ask-people-outside = No puedo usar ese numero. ¿Para cuantas personas es?
ask-days = ¿Para cuantos dias? (O diga cuanto tiene.)
ask-days-outside = No puedo usar eso. ¿Para cuantos dias?
ask-stock-liquid = ¿Cuantos litros de { $product } tiene? O: ¿para cuantas personas y dias?
ask-stock-powder = ¿Cuantos kg o g de { $product } tiene? O: ¿para cuantas personas y dias?
ask-stock-tablets = ¿Cuantas pastillas tiene? O: ¿para cuantas personas y dias?
ask-stock-outside = No puedo usar esa cantidad. ¿Cuanto { $product } tiene?

last-resort = ULTIMO RECURSO, fuerza desconocida: { $drops } por litro, espere { $wait }. Debe oler un poco a cloro; si no, repita una vez y espere; si aun no, no la beba.
last-resort-total = ULTIMO RECURSO, % desconocido: { $total } en total ({ $drops } por litro), espere { $wait }. Debe oler a cloro; si no, repita una vez, espere; si aun no, no la beba.

## No dose

refused-chemical = Sin dosis: cloro, yodo, hervir y filtros no quitan combustible, pesticida, desechos ni sal. No la beba. Busque otra agua, avise al centro de salud.
refused-iodine_unsuitable = Sin yodo en embarazo, mal de tiroides, bebés o por mas de unas semanas. En su lugar hierva, o use cloro simple: mande su % y los litros.
refused-mixed = PELIGRO: nunca mezcle cloro con acido, vinagre, amoniaco o limpiadores: gas venenoso. Ventile, salga al aire libre. Solo cloro simple y agua.
refused-other_use = Respondo solo sobre agua de beber y limpieza. Para heridas, ojos, dialisis, peces, piscinas, ropa o alimentos pregunte a personal de salud.
refused-over_limit = Mas del doble de la dosis no es seguro para beber.

## Somebody hurt or ill

first-aid = BUSQUE AYUDA MÉDICA YA. Si lo trago: enjuague boca, sorbos de agua si esta despierto, NO haga vomitar. Ojo o piel: enjuague { $rinse } con agua. Gas: aire libre.
first-aid-powder = BUSQUE AYUDA MÉDICA YA. Si lo trago: enjuague boca, sorbos de agua si despierto, NO haga vomitar. Piel: sacuda. Ojo, piel: enjuague { $rinse }. Gas: aire libre.
# Before first aid, where the deployment names a number to call.
help-line = Llame al { $number }.
first-aid-then = Luego pregunte otra vez.
unsure = ¿Alguien lo trago o se salpico? Enjuague, NO haga vomitar, busque ayuda médica. Si solo quiere la dosis, mande solo producto, % y litros.
illness = Suero oral a sorbitos, siga dando pecho. Al centro de salud YA si hay sangre, ojos hundidos, sin orina, muy débil o no puede beber. No puedo diagnosticar.
illness-danger = AL CENTRO DE SALUD YA. Nada por boca si inconsciente o no puede tragar. Despierto: suero oral a sorbitos en camino, siga dando pecho. No puedo diagnosticar.
illness-feeding = Prepare el suero como dice su sobre, con agua segura. Siga dando comida.
illness-water = Trate ya toda el agua de beber, lave manos con jabon, avise al centro de salud si hay mas de un enfermo.

## Service

kept = Guardado: { $product }{ $label }. Ahora mande solo los litros.
kept-part = Guardado: { $product }. ¿Qué % o mg dice su etiqueta? Mande: mi { $product } es ...
kept-figure = Guardado:{ $label }. ¿Qué producto es?
not-kept = No lo guardé: no estoy seguro del producto y su %. Mande asi: recuerda cloro 5%
kept-opened = Abierto { $date }.
kept-future = { $date } aun no llega. ¿Cuando se abrio? Mande asi: abierto 1 marzo 2026.
bottle = { $bottle }.
bottles = Recuerdo: { $list }
bottles-none = No recuerdo ninguna botella suya. Mande asi: recuerda cloro 5%, 1 L
left = Queda: { $amount }, trata { $litres }.
left-amount = Queda: { $amount }.
left-days = A su ritmo dura { $days }: consiga mas ya.
left-short = Por mi cuenta solo queda { $amount } en su botella.
left-empty = Por mi cuenta ya se acabo: consiga mas.
age-soon = Uselo pronto: dura { $months } meses.
age-now = Tiene mas de { $months } meses: consiga nuevo.
age-estimate = Calculo: queda cerca de { $percent }% de su fuerza si se guardo a { $celsius } C. La dosis no cuenta con eso: revise el olor.
undone = No contado. { $left }
nothing-to-undo = Hoy no conté ninguna dosis suya.
will-remind = Le escribo en { $wait }.
nothing-to-wait-for = No hay espera que recordarle. Pida primero una dosis.
reminder-chlorine = Ya pasaron { $wait }. ¿Agua turbia o fria? Espere mas. Huela: leve olor a cloro, lista. Sin olor: la misma dosis una vez mas y espere de nuevo.
reminder-disinfectant = Ya pasaron { $wait }: lista para beber. Si el agua era turbia o fria, espere mas.
reminder-retest = Ya pasaron { $wait }: mida el cloro otra vez antes de que alguien beba.
reminder-sun = Ya pasaron { $wait }. Si hubo buen sol, lista para beber; si no, déjela mas tiempo.
reminder-surface = Ya pasaron { $wait }: enjuague la superficie.
reminder-well = Ya pasaron { $wait }: bombee el pozo, luego mida. Nadie bebe antes.
seen = Su otra pregunta ({ $topic }): mandela sola.
topic-boil = hervir
topic-dose = la dosis
topic-dilute = limpieza
topic-storage = guardar
topic-well = el pozo
topic-why = por qué
set-language = Idioma: { $language }.
set-language-unknown = Aun no hablo { $language }. Sigo en español.
set-units-metric = Unidades: litros y mL.
set-units-us = Unidades: galones US.
set-units-imperial = Unidades: galones imperiales.
help = Mande producto, % de etiqueta, litros. Ej: 20 L turbia, cloro 5%. Pregunte: hervir, pozo, limpieza, prueba de cloro, stock, guardar, MAS, PORQUE, BAJA, BORRAR.
greeting = matone dice como hacer segura el agua. Mande producto, % y litros, asi: 20 L turbia, cloro 5%. O AYUDA.
stopped = Baja hecha: no mandaré mensajes sin que pregunte. Seguiré respondiendo sus preguntas. ALTA para volver.
started = Mensajes activados. Mande producto, % y litros, asi: 20 L turbia, cloro 5%. O AYUDA.
dropped = Ya no recuerdo su { $product }.
forgotten = Todo lo guardado de usted esta borrado.
not-understood = No entendi. Mande producto, % y litros, asi: 20 L turbia, cloro 5%. O AYUDA.
nothing-before = Primero pida una dosis. Mande producto, % y litros, asi: 20 L turbia, cloro 5%.
nothing-more = Eso era todo. PORQUE da las fuentes.
why = { $dose }{ $wait }{ $logs } Fuentes: { $sources }.
why-dose = Da { $mg } mg/L.
why-wait-rule = { " " }Espera: regla publicada.
why-wait-unknown = { " " }Espera: regla publicada, temperatura no conocida.
why-wait-cold = { " " }Espera: mas larga por agua fria.
why-wait-ct = { " " }Espera: tiempo de contacto { $reached } de { $needed } mg.min/L que hacen falta, contando con { $residual } mg/L.
why-logs = { " " }A { $celsius } C y pH { $ph }, con { $residual } mg/L: contacto { $reached } de { $needed } mg.min/L; virus { $viruses } log, Giardia { $giardia } log, Cryptosporidium ninguno.
why-boil = Unas agencias piden hervir mas solo a mayor altura, y el organismo mundial solo el borboton: sigo la regla mas estricta.
source-published = { $title } ({ $publisher }, { $year })
source-undated = { $title } ({ $publisher })
source-memory = { $title } ({ $publisher }; de memoria)
source-common = practica comun sin fuente

## The printed chart: read from a wall, so no message of it has to fit an SMS

chart-title = Cuánto cloro hace segura el agua
chart-caption = Añada esta cantidad de cloro líquido simple (lejía de hipoclorito de sodio). El % debe ser el de su botella.
chart-water = Agua
chart-bottle = Cloro { $percent }%
chart-clear = Clara
chart-cloudy-or-cold = Turbia o fría
chart-imperial-quarts = { $value } qt imp
chart-teaspoons = { $spoons } cdta
chart-tablespoons = { $spoons } cda
chart-or = o { $way }
chart-then-wait = Luego espere
chart-wait-if-cold = fría: { $wait }
chart-legend = Mida de una sola forma: gotas, mL o cucharas. cdta: cucharadita rasa. cda: cucharada rasa. Fría: fría al tocarla con la mano.

chart-step-add = Busque su agua en la tabla. Añada esa cantidad de cloro y mezcle.
chart-step-wait = Espere lo que dice la última fila. Nadie bebe antes.
chart-survive = El cloro no mata { $list }.
chart-may-survive = { $list } puede sobrevivir.

chart-caution-chemicals-stay = El cloro no quita combustible, pesticidas, desechos ni sal: busque otra agua.
chart-caution-keep-from-children = Guarde el cloro lejos de los niños.
chart-caution-label-first = Si la botella da instrucciones para agua de beber, siga esas.
chart-caution-never-mix = Nunca lo mezcle con ácido o amoníaco: gas.
chart-caution-old-bottle = Use una botella de menos de un año.
chart-caution-smell-check = Huela el agua. Debe oler un poco a cloro. Si no huele, añada la misma cantidad una vez más y espere otra vez. Si aún no huele, no la beba.
chart-caution-strain-first = Agua turbia: déjela asentar, luego cuélela con una tela limpia.
chart-caution-too-murky = Agua tan turbia que no se lee letra impresa a través: no use cloro, hiérvala.
chart-caution-unscented-only = Solo cloro simple: sin aroma, sin color, no espeso, sin otro limpiador.
chart-caution-weak-immunity-boil = Para bebés y personas con defensas bajas: en su lugar, hierva el agua.

chart-sources = Fuentes: { $sources }.
chart-printed = Impreso { $year }-{ $month }-{ $day }.

## Terminal and command line

terminal-greeting = matone: cómo hacer segura para beber el agua que tiene. Primero siga las reglas de su centro de salud.
terminal-examples = Pruebe:  2 galones turbia cloro 1%  |  cuánto hervir a 2400 m  |  recuerda mi cloro es 5%
terminal-bye = Que esté bien.
