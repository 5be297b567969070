# What matone says in Portuguese (Brazil, Mozambique, Angola).
#
# The program hands over every figure, already written out; no message may hold a figure of its
# own. Counts ending in -n only choose the plural form. Keep to the GSM 7-bit alphabet: accents are
# dropped as people drop them in SMS (nao, agua, po, poco); é (is) keeps its accent against e (and).
# A dose answer is a head and then cautions, as many as one SMS holds; the others wait for MAIS.

## Names

product-bleach = lixivia
product-bleaching_powder = cal clorada
product-calcium_hypochlorite = hipoclorito de calcio
product-chlorine_dioxide = dioxido de cloro
product-iodine_tablet = comprimidos de iodo
product-iodine_tincture = tintura de iodo
product-nadcc = pastilhas de cloro
product-povidone_iodine = iodopovidona

method-fire = ferver
method-filter = um filtro
method-sunlight = sol em garrafas transparentes

product-any = cloro

clarity-clear = { " " }clara
clarity-cloudy = { " " }turva
# Said where the answer has no room for cloudy water and takes the water for clear.
clarity-assumed = { " " }se clara
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
measure-ml-teaspoon = { $ml } mL ({ $spoons } col. cha)
measure-ml-tablespoon = { $ml } mL ({ $spoons } col. sopa)
measure-later = Isso é { $measure }.
tablets = { $count-n ->
    [one] { $count } pastilha
   *[other] { $count } pastilhas
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
echo-remembered = { $volume }{ $clarity }{ $warmth }, do seu frasco: { $product }{ $label }
head-liquid = { $echo }: ponha { $measure }, mexa, espere { $wait }.
head-liquid-cloudy = { $echo }: deixe assentar, coe, ponha { $measure }, mexa, espere { $wait }.
head-tablets = { $echo }: { $measure }, mexa, espere { $wait }.
head-tablets-cloudy = { $echo }: deixe assentar, coe, { $measure }, mexa, espere { $wait }.
head-powder = { $echo }: dissolva { $measure } num balde de agua, despeje dentro, mexa, espere { $wait }.
head-powder-cloudy = { $echo }: deixe assentar, coe. Dissolva { $measure } num balde de agua, despeje dentro, mexa, espere { $wait }.
head-stock = { $echo }: { $grams } com agua até { $litres } = solucao a { $percent }%. Ponha { $measure } dela, mexa, espere { $wait }.
head-stock-cloudy = { $echo }: deixe assentar, coe. { $grams } com agua até { $litres } = solucao a { $percent }%. Ponha { $measure } dela, mexa, espere { $wait }.
head-label = { $echo }: ponha o que o rotulo diz para esta agua, mexa, espere { $wait }.
head-label-cloudy = { $echo }: deixe assentar, coe, ponha o que o rotulo diz, mexa, espere { $wait }.

if-cloudy-or-cold = Turva: { $measure }, { $wait }; fria: igual, { $coldwait }.
head-new-tank = { $echo }. Tanque novo ou sujo, antes: esfregue, encha, ponha { $measure }, deixe { $wait }, esvazie. Depois a dose.
if-new-tank = Tanque novo ou sujo: esfregue, encha, ponha { $measure }, deixe { $wait }, esvazie; depois a dose.
if-cloudy-or-cold-same = Turva ou fria: { $measure }, { $wait }.
if-cloudy = Turva: coe, { $measure }, { $wait }.
if-cold = Fria: { $measure }, { $wait }.
if-cold-wait = Fria: espere { $wait }.

more-hint = MAIS
# Words that people may send next; each is one that the lexicon reads.
next-why = PORQUE
next-remind = LEMBRE-ME
next-help = AJUDA

## Wells

head-well = Poco { $across } de largo, { $depth } de agua ({ $volume }): { $measure } { $product } em baldes, despeje, mexa, deixe { $wait }. NAO BEBA sem bombear até { $ready } mg/L.
head-well-cloudy = Turvo: antes esvazie, deixe clarear. { $across } x { $depth } ({ $volume }): { $measure } { $product } em baldes, despeje, mexa, deixe { $wait }. NAO BEBA sem bombear até { $ready } mg/L.
well-wall = Antes escove a parede com { $ml } dele em { $litres } de agua.
well-wall-stock = Antes escove a parede com { $ml } de solucao a { $percent }% em { $litres } de agua.
well-hurry = Um poco precisa de { $wait }. Apenas em emergencia { $emergency }, depois bombeie tudo e teste. Ninguém bebe antes.
well-emergency = Apenas em emergencia: { $wait } em vez disso.

## Solutions for hands, cleaning and stock

head-dilute-liquid = { $volume } a { $target }%: { $measure } de { $product } + { $water } de agua (uma parte + { $parts } partes de agua).
head-dilute-as-is = { $volume } a { $target }%: use { $product } tal como vem, nao junte agua.
head-dilute-tablets = { $volume } a { $target }%: { $count } { $product } ({ $per } em cada litro), complete com agua até { $volume }.
head-dilute-made-up = { $volume } a { $target }%: { $measure } de { $product } ({ $per } em cada litro), complete com agua até { $volume }.
dilute-hands = Para maos: nao para os olhos, nao para beber.
dilute-surfaces = Deixe as superficies molhadas { $wait }, depois enxague. Nao é para beber.
dilute-stock = Prepare nova cada dia. Nao a beba assim.
dilute-any-volume = Para qualquer quantidade: uma parte + { $parts } partes de agua.

## Chlorine tests

residual-enough = { $reading } mg/L chega (minimo { $least }). Guarde tapada e beba em até { $keeps }.
residual-enough-at-use = { $reading } mg/L. { $retest } depois da dose: é pouco (minimo { $aim }), nao beba. No recipiente de onde bebem, até { $keeps }: chega (minimo { $atuse }). Qual é?
residual-low = { $reading } mg/L é pouco, minimo { $aim }. Nao beba ainda: junte cloro, espere { $retest }, teste de novo. Para saber a quantidade mande litros, produto e %.
residual-add = { $reading } mg/L é pouco. Em { $volume } ponha { $measure } de { $product }, mexa, espere { $wait }, teste de novo: minimo { $aim } mg/L antes de alguém beber.
residual-add-zero = { $reading } mg/L. Nunca tratada? Peca a dose toda. Tratada: em { $volume } ponha { $measure } de { $product }, mexa, { $wait }, teste: { $aim } mg/L antes de beber.
residual-add-stock = { $reading } mg/L é pouco. { $grams } de { $product } com agua até { $litre } = { $percent }%: em { $volume } ponha { $measure } disso, espere { $wait }, teste: { $aim } mg/L.
residual-add-zero-stock = { $reading } mg/L. Nunca tratada? Peca a dose toda. Tratada: { $grams } de { $product } até { $litre } = { $percent }%; em { $volume } ponha { $measure } disso, { $wait }, teste.
residual-too-early = { $reading } mg/L, mas ainda é cedo para saber. Teste de novo { $retest } depois da dose: minimo { $aim } mg/L.
residual-high = { $reading } mg/L é demais para todos os dias (maximo { $most }). Deixe destapada ou passe de um recipiente limpo a outro, teste de novo.
residual-too-high = { $reading } mg/L é demais: nao beba ainda. Deixe destapada ou passe de um recipiente limpo a outro até { $most } mg/L ou menos.
residual-stale = { $reading } mg/L, e tratada ha mais de { $keeps }: trate de novo antes de beber.
residual-no-kit = Sem kit: { $retest } depois da dose tem de cheirar um pouco a cloro. Nao cheira: a mesma dose mais uma vez, espere { $retest }. Ainda nada: nao beba.
residual-already-dosed = Ja tem dose: nao ponha mais agora. { $retest } depois da dose tem de cheirar um pouco a cloro. Cheiro forte ou dose a mais: nao beba, busque agua nova.
residual-still-no-smell = Ainda sem cheiro: nao beba e nao ponha mais. Ferva, ou procure agua mais clara e trate de novo.
residual-no-smell = Sem cheiro: ponha a mesma dose mais uma vez, espere { $retest }, cheire. Ainda sem cheiro a cloro: nao beba. Ferva ou procure agua mais clara.
residual-smells = Um cheiro fraco a cloro depois da espera é bom: beba. Se for forte, deixe destapada ou passe de um recipiente limpo a outro.
residual-well-not-ready = { $reading } mg/L: o poco nao esta pronto. NAO BEBA. Continue a bombear até { $ready } mg/L ou menos, depois trate a agua antes de beber até o teste dar limpo.
residual-well-ready = { $reading } mg/L: o poco foi bombeado que chegue ({ $ready } ou menos). Continue a tratar a agua antes de beber até o teste dar limpo.
residual-zero = Zero outra vez? A agua come o cloro: clareie-a, ou teste doses em baldes (teste de jarros).

## Jar test

jar-found = Teste de jarros: { $dose } em { $jar } deixa { $aim } mg/L. Sao { $each } da mesma solucao para cada { $thousand }. Mande os litros do tanque para a dose.
jar-found-tank = Teste de jarros: { $dose } em { $jar } deixa { $aim } mg/L. Para { $tank }: { $measure } da mesma solucao, mexa, espere { $wait }, teste de novo.
jar-all-above = Todos os jarros passam de { $aim } mg/L: repita o teste com menos em cada { $jar }.
jar-all-below = Nenhum jarro chegou a { $aim } mg/L: repita o teste com mais em cada { $jar }.
jar-how-to = Teste de jarros: { $doses } mL de solucao a { $percent }% em quatro baldes de { $jar }, mexa, espere { $wait }, teste. Mande mL e leitura de cada. Alvo { $aim } mg/L.
jar-uneven = Mais solucao tem de deixar mais cloro; estas leituras sobem e descem. Repita o teste de jarros.

## Stock and people

people = { $people-n ->
    [one] { $people } pessoa
   *[other] { $people } pessoas
}
supply-clear-water = agua clara
supply-cloudy-water = agua turva
stock-counted = { $count } { $product }
stock-measured = { $amount } de { $product }
supply-treats = { $stock }: trata cerca de { $litres } de { $water }.
supply-lasts = { $stock }: cerca de { $days } para { $people }, { $each } por pessoa e dia ({ $drinkingdays } se for apenas para beber, { $drinking }).
supply-serves = { $stock }: cerca de { $people } durante { $days }, { $each } por pessoa e dia ({ $drinkingpeople } se for apenas para beber, { $drinking }).
supply-needs = { $people }, { $days }, { $each } por pessoa e dia = { $litres } de { $water }: { $need }. Encomende { $measure } ({ $margin }% de reserva).
supply-counted-cloudy = Contado para agua turva.
supply-ages = Mas guarda-se apenas { $months } meses.
supply-if-cloudy = Agua turva gasta o dobro.

## Keeping

storage-water = Agua tratada: tapada, em recipiente limpo de boca estreita. Despeje, ou use torneira ou concha: nada de maos. Beba em até { $keeps }, depois trate de novo.
storage-hands = Se entraram maos ou copo sujo, trate de novo.
storage-rinse = Enxague o recipiente antes de encher: { $ml } de lixivia (agua sanitaria) em { $litre } de agua, { $seconds } segundos.
storage-product = Guarde { $product } bem fechado, em lugar fresco e escuro, fora do alcance das criancas, longe de acidos e produtos de limpeza. Troque depois de { $months } meses.
storage-product-by-pack = Guarde { $product } bem fechado, em lugar fresco, seco e escuro, fora do alcance das criancas. Nao use depois da data da embalagem.

## Boiling, sun, filters

head-boil = Deixe levantar fervura forte, mantenha a ferver { $wait }, deixe esfriar tapada.
head-boil-cloudy = Deixe assentar, coe, deixe levantar fervura forte, mantenha a ferver { $wait }, deixe esfriar tapada.
if-high = Acima de { $altitude } m ou na serra: { $wait }.
boiling-point = A { $altitude } m a agua ferve a { $celsius } C: chega para matar todos os germes da agua de beber.
head-sun = Garrafas transparentes até { $size } ao sol: { $wait }.
head-sun-unsure = Garrafas transparentes até { $size }: { $sunny } se houver sol todo o dia, senao { $wait }. Nao com chuva.
head-sun-rain = Com chuva o sol nao torna a agua segura. Ferva ou use cloro. Ou recolha agua limpa da chuva e trate-a.
fill-and-shake = Encha tres quartos, agite, complete, ponha a garrafa deitada.
head-filter = Um filtro de { $pore } micron{ $stops }{ $passes }.
head-filter-unknown = Um filtro de poros desconhecidos{ $stops }{ $passes }. Procure nele a medida em microns.
filter-stops = { " " }retém { $list }
filter-passes-after-stops = ; nao retém { $list }
filter-passes-only = { " " }nao retém { $list }
reason-kills-all = Ferver mata todos os germes, também em agua turva e fria.
reason-nothing-else = Nada do que disse a torna segura; o fogo sim.
reason-only-one = É a unica coisa das que disse que serve aqui.
reason-two-barriers = Dois passos sao mais seguros que um.
reason-widest-cover = De tudo o que tem, é o que protege de mais germes.
head-choose = Melhor aqui: { $first }.
head-choose-then = Melhor aqui: { $first }. Se nao for possivel: { $second }.
head-choose-nothing = Melhor: { $first }. Diga o que tem: lixivia (agua sanitaria), pastilhas, iodo, filtro, sol.
method-pair = { $one }, depois { $two }

organism-bacteria = bactérias
organism-viruses = virus
organism-giardia = Giardia
organism-cryptosporidium = Cryptosporidium
organism-some = parte de { $what }
list-two = { $one } e { $two }
list-two-or = { $one } ou { $two }
list-more = { $one }, { $rest }

## Cautions: one short sentence each

caution-absolute-pore = O numero deve ser absoluto (ou para quistos), nao nominal.
caution-bottle-size = Garrafas PET transparentes, nao jarros de vidro nem recipientes grandes.
caution-clean-tank-first = Limpe antes o tanque; nunca um que teve combustivel ou esgoto.
caution-cool-and-dark = Guarde em lugar fresco e escuro.
caution-danger-signs = Sangue, olhos fundos, sem urina, muita fraqueza: ja ao posto de saude.
caution-fresh-daily = Prepare nova cada dia.
caution-gloves-and-air = Use luvas, abra as portas, cuidado com os olhos.
caution-keep-from-children = Fora do alcance das criancas.
caution-keep-treating = Continue a tratar a agua do poco até o teste dar limpo.
caution-let-stand = Forte demais? Deixe destapada ou passe de um recipiente limpo a outro.
caution-narrow-neck = Recipiente tapado, boca estreita, sem maos.
caution-never-mix = Nunca misture com acido ou amonia: gas.
caution-not-for-drinking = Nao é para beber.
caution-not-until-pumped = Nao beba até bombear tudo e testar.
caution-rehydrate = Soro oral em goles pequenos.
caution-retest-later = Teste de novo depois da espera.
caution-stir-tank = Ponha a dose enquanto enche ou mexa bem; torneiras fechadas durante a espera.
caution-tablet-too-strong = Uma pastilha é forte demais para tao pouca: trate mais agua com ela.
caution-well-clear-first = Poco turvo: esvazie e deixe clarear antes.
caution-well-ph = Com este pH a cloracao de choque funciona mal: fale com os servicos de agua.
caution-chemicals-stay = Quimicos e sal ficam na agua.
caution-cold-takes-longer = Mais tempo se fria.
caution-cryptosporidium-survives = Cryptosporidium sobrevive.
caution-fresh-air = Gas: saia para o ar livre.
caution-giardia-partly = Giardia pode sobreviver.
caution-higher-boil-longer = Em zona alta: ferva mais tempo.
caution-iodine-unsuitable = Nao na gravidez, doenca da tiroide, bebés, uso longo.
caution-leptospira-passes = Leptospira passa.
caution-label-first = Se o rotulo der dose para agua de beber, siga-a.
caution-no-shorter-wait = Nao encurte a espera.
caution-medical-help = Va ja ao posto de saude.
caution-no-vomiting = Nao provoque o vomito.
caution-rinse-with-water = Enxague com agua.
caution-not-in-rain = Nao com chuva.
caution-old-bottle = Frasco com mais de um ano: arranje novo.
caution-pore-unknown = Poros desconhecidos: nao confie apenas nele.
caution-smell-check = Depois da espera tem de cheirar um pouco a cloro; se nao, repita a mesma dose uma vez e espere de novo; se ainda nao, nao beba.
caution-second-method = Use também um segundo método.
caution-sewage = Esgoto: ferva, se houver algum modo.
caution-spores-survive = Esporos resistentes ao calor precisam de pressao: nao serve para instrumentos estéreis.
caution-strain-first = Antes deixe assentar e coe.
caution-print-test = Tem de conseguir ler letras através da garrafa cheia.
caution-lower-figure = Usei o numero mais baixo do rotulo.
caution-too-murky = Se nao se podem ler letras através dela, ferva.
caution-unscented-only = Apenas lixivia simples.
caution-viruses-pass = Virus passam: ferva ou use cloro também.
caution-weak-immunity-boil = Bebés ou imunidade fraca: ferva.
caution-two-days = Sol incerto? Deixe os dois dias.

extra-lower-figure = Usei o numero mais baixo do rotulo.
extra-old-bottle = Frasco velho: arranje novo.
extra-see-health-worker = Doentes: soro oral e posto de saude ja.

covers = Mata: bactérias { $bacteria }, virus { $viruses }, Giardia { $giardia }, Cryptosporidium { $cryptosporidium }.
boil-kills-all = Ferver mata todos.
cover-yes = sim
cover-partly = em parte
cover-no = nao
defer = As regras do seu posto de saude valem primeiro.

## Changed doses

adjusted-faster = { $echo }. Apenas se clara e nao fria: { $measure } ao todo, espere { $wait }. Mais gosto, nao mais seguranca.
adjusted-weaker = { $echo }. Da proxima vez, apenas se clara e nao fria: { $measure }, espere { $wait }. Esta agua: deixe destapada.
cannot-faster = Nao se pode encurtar com seguranca. Mais rapido: fervura forte, depois esfriar.
of-solution = NUNCA a beba: apenas para limpeza. Prepare nova cada dia, fechada, com rotulo, longe das criancas. Para agua de beber mande litros e % do frasco.
too-strong = Cloro a mais? Deixe destapada umas horas ou passe de um recipiente limpo a outro. Nunca encurte a espera. Se alguém bebeu e se sente mal: va ao posto de saude.
cannot-weaker = Menos nao seria seguro aqui. Pelo gosto: deixe destapada, ou passe de um recipiente limpo a outro, depois da espera.

## Questions

ask-product = Que produto tem: lixivia (agua sanitaria), pastilhas de cloro, cloro em po ou iodo?
ask-product-chlorine = Que cloro tem: lixivia (agua sanitaria), hipoclorito de calcio ou cal clorada?
ask-product-unfit-for-well = Isso nao serve para pocos. Tem lixivia (agua sanitaria), hipoclorito de calcio ou cal clorada?
ask-product-unfit-for-cleaning = Isso nao serve para isto. Tem lixivia (agua sanitaria), cloro em po ou pastilhas de cloro?
ask-product-unfit-for-residual = Isso nao sobe o cloro. Tem lixivia (agua sanitaria), cloro em po ou pastilhas de cloro?
ask-product-unfit-for-supply = Para quanto chega, diz o rotulo. Que outro produto tem: lixivia (agua sanitaria), cloro em po, pastilhas de cloro ou iodo?
ask-product-bleach-tablet = O que contém essas pastilhas? Mande o que diz o rotulo, com os mg. Apenas servem as feitas para agua de beber.
ask-product-chlorine-form = O cloro é liquido, em po ou em pastilhas? Mande com o % ou os mg do rotulo.
ask-product-iodine-form = Que iodo é: tintura, iodopovidona ou comprimidos?
ask-product-pool = Cloro de piscina pode ser estabilizado: nao serve para agua de beber. Tem lixivia simples, pastilhas para agua de beber ou iodo? Se nao, ferva.
ask-product-powder-form = Que po: hipoclorito de calcio ou cal clorada? Mande o % do rotulo.
ask-product-spoiled = Lixivia perfumada, grossa ou com cor nao serve para agua de beber. Tem lixivia simples, pastilhas ou iodo? Se nao, ferva.
ask-product-tablet-form = As pastilhas sao de cloro ou de iodo? Mande o nome e os mg da cartela.
ask-product-two-products = Isso é mais do que um produto. Qual vai usar?

ask-strength = Que % diz o rotulo ({ $product })?
ask-strength-no-label = Sem o % nao dou dose. Acha outro frasco com rotulo? Se nao, ferva: fervura forte, depois esfriar. Se também nao tem fogo, diga: sem rotulo sem fogo.
ask-strength-degrees = Que % diz o rotulo ({ $product })? Graus podem ser duas coisas.
ask-strength-denied = Entao que % é? Leia o rotulo ({ $product }).
ask-strength-bound = Que % exato diz o rotulo ({ $product })? "Menos de" nao chega para uma dose.
ask-strength-guessed = Veja o rotulo ({ $product }): que % esta impresso?
ask-strength-outside = { $product }: nao existe com esse %. Que % esta impresso no rotulo?
ask-strength-is-target = Isso é para a agua. Que % esta impresso no rotulo ({ $product })?
ask-strength-is-solution = Isso é um % para limpeza. Que % esta impresso no rotulo ({ $product })?
ask-strength-thinned = { $product } com agua misturada nao tem % conhecido. Que % diz o rotulo de um frasco fechado ou sem mistura? Se nao houver, ferva.
ask-strength-two = Dois % diferentes. Qual esta impresso no rotulo ({ $product })?
ask-strength-unreadable = Nao consigo ler o %. Mande de novo, assim: 3,5%
ask-strength-wide = Esse intervalo é grande demais. Que % exato diz o rotulo ({ $product })?

ask-tablet = Quantos mg tem uma pastilha? Esta na cartela ou na caixa.
ask-tablet-compound = Isso sao os mg de iodo? Muitas vezes vem impresso o composto. Quantos mg de iodo solta uma pastilha?
ask-tablet-two = Dois tamanhos de pastilha. Quais mg vai usar?
ask-tablet-outside = Essa nao é pastilha para agua de beber que eu conheca. Quantos mg estao impressos na cartela?

ask-volume = Quantos litros de agua quer tratar?
ask-volume-uncounted = Quantos litros sao ao todo?
ask-volume-unsized = Quantos litros leva? (baldes e bidoes variam)
ask-volume-outside = Nao posso usar essa quantidade. Quantos litros de agua quer tratar?
ask-volume-two = Mais do que uma quantidade de agua. Quantos litros quer tratar de uma vez?
ask-volume-unreadable = Nao tenho certeza da quantidade. Quantos litros de agua? Escreva sem pontos, assim: 1000 L

ask-volume-solution = Quantos litros de solucao quer preparar?
ask-volume-tank = Quantos litros de agua tem dentro?
ask-jar = Quantos litros de agua tinha cada jarro ou balde?

ask-diameter = Qual é a largura do poco, em metros?
ask-diameter-outside = Nao posso usar essa largura. Quantos metros tem o poco de lado a lado?
ask-depth = Que altura de agua tem o poco, em metros? Desca uma pedra numa corda e meca a parte molhada.
ask-well-depth-only = Isso é o poco. Que altura de AGUA tem dentro, em metros? Desca uma pedra numa corda e meca a parte molhada.
ask-water-depth-outside = Nao posso usar essa altura. Quantos metros de agua tem o poco?
ask-target = Que % deve ter? Maos { $hands }%, chao { $floors }%, sangue { $blood }%, vomito ou fezes de colera { $stools }%. O seu posto de saude pode dizer outro.
ask-target-outside = Nao posso usar esse %. Quantos % deve ter a solucao? Maos { $hands }%, chao { $floors }%, sangue { $blood }%.
ask-target-too-strong = O seu produto ({ $product }) é mais fraco que isso. Quantos % deve ter a solucao? Maos { $hands }%, chao { $floors }%, sangue { $blood }%.
ask-residual = Que valor deu o teste, em mg/L (ou ppm)?
ask-people = Para quantas pessoas é?
ask-people-outside = Nao posso usar esse numero. Para quantas pessoas é?
ask-days = Para quantos dias? (Ou diga quanto tem.)
ask-days-outside = Nao posso usar isso. Para quantos dias?
ask-stock-liquid = Quanto tem ({ $product }), em litros? Ou: para quantas pessoas e dias?
ask-stock-powder = Quantos kg ou g tem ({ $product })? Ou: para quantas pessoas e dias?
ask-stock-tablets = Quantas pastilhas tem? Ou: para quantas pessoas e dias?
ask-stock-outside = Nao posso usar essa quantidade. Quanto tem ({ $product })?

last-resort = ULTIMO RECURSO, % desconhecido: { $drops } por litro, espere { $wait }. Deve cheirar um pouco a cloro; se nao, repita uma vez, espere; se ainda nao, nao beba.
last-resort-total = ULTIMO RECURSO, % desconhecido: { $total } ao todo ({ $drops }/litro), espere { $wait }. Deve cheirar a cloro; se nao repita uma vez, espere; se ainda nao, nao beba.

## No dose

refused-chemical = Sem dose: cloro, iodo, ferver e filtros nao tiram combustivel, pesticida, residuos nem sal. Nao beba. Procure outra agua, avise o posto de saude.
refused-iodine_unsuitable = Nada de iodo na gravidez, doenca da tiroide, bebés ou além de poucas semanas. Em vez disso ferva, ou use lixivia simples (agua sanitaria): mande % e litros.
refused-mixed = PERIGO: nunca misture lixivia com acido, vinagre, amonia ou produtos de limpeza: gas venenoso. Abra tudo, va para o ar livre. Apenas lixivia simples e agua.
refused-other_use = Respondo apenas sobre agua de beber e limpeza. Para feridas, olhos, dialise, peixes, piscinas, roupa ou comida pergunte ao posto de saude.
refused-over_limit = Mais do dobro da dose nao é seguro para beber.

## Somebody hurt or ill

first-aid = VA JA AO POSTO DE SAUDE. Engoliu: lave a boca, goles de agua se acordado, NAO provoque vomito. Olho ou pele: lave { $rinse } com agua. Gas: ar livre.
first-aid-powder = VA JA AO POSTO DE SAUDE. Engoliu: lave a boca, goles de agua se acordado, NAO provoque vomito. Pele: sacuda o po. Olho, pele: lave { $rinse }. Gas: ar livre.
# Before first aid, where the deployment names a number to call.
help-line = Ligue { $number }.
first-aid-then = Depois pergunte de novo.
unsure = Engoliu ou salpicou? Entao lave com agua, NAO provoque vomito, va ao posto de saude. Se quer apenas a dose, mande apenas produto, % e litros.
illness = Soro oral em goles pequenos, continue a amamentar. JA ao posto se sangue, olhos fundos, sem urina, muita fraqueza ou nao consegue beber. Nao dou diagnostico.
illness-danger = JA AO POSTO DE SAUDE. Nada pela boca se desmaiado ou nao pode engolir. Acordado: soro oral em goles pequenos no caminho, amamente. Nao dou diagnostico.
illness-feeding = Prepare o soro como diz o pacote, com agua segura. Continue a dar comida.
illness-water = Trate ja toda a agua de beber, lave as maos com sabao, avise o posto de saude se houver mais de um doente.

## Service

kept = Anotado: { $product }{ $label }. Agora mande apenas os litros.
kept-part = Anotado: { $product }. Qual é o % ou mg do rotulo? Mande: o meu frasco é { $product } ...
kept-figure = Anotado:{ $label }. Que produto é?
not-kept = Nao anotei: nao tenho certeza do produto e do %. Mande assim: anote lixivia 5%
kept-opened = Aberto { $date }.
kept-future = { $date } ainda nao chegou. Quando foi aberto? Mande assim: aberto em 1 de maio de 2026.
bottle = { $bottle }.
bottles = Tenho anotado: { $list }
bottles-none = Nao tenho nenhum frasco seu anotado. Mande assim: anote lixivia 5%, 1 L
left = Resta: { $amount }, trata { $litres }.
left-amount = Resta: { $amount }.
left-days = Ao seu ritmo { $days }: arranje mais ja.
left-short = Pelas minhas contas restam apenas { $amount } no frasco.
left-empty = Pelas minhas contas ja acabou: arranje mais.
age-soon = Use em breve: guarda-se { $months } meses.
age-now = Tem mais de { $months } meses: arranje novo.
age-estimate = Estimativa: resta cerca de { $percent }% da concentracao se guardado a { $celsius } C. A dose nao conta com isso: veja o cheiro.
undone = Nao contado. { $left }
nothing-to-undo = Hoje nao contei nenhuma dose sua.
will-remind = Escrevo daqui a { $wait }.
nothing-to-wait-for = Nao ha espera para lembrar. Peca antes uma dose.
reminder-chlorine = Passaram { $wait }. A agua era turva ou fria? Entao espere mais. Cheire: fraco a cloro, pronta. Sem cheiro: a mesma dose mais uma vez e espere de novo.
reminder-disinfectant = Passaram { $wait }: pronta para beber. Se a agua era turva ou fria, espere mais.
reminder-retest = Passaram { $wait }: teste o cloro de novo antes de alguém beber.
reminder-sun = Passaram { $wait }. Se houve sempre sol, pronta para beber; se nao, deixe mais tempo.
reminder-surface = Passaram { $wait }: enxague a superficie.
reminder-well = Passaram { $wait }: bombeie o poco todo, depois teste. Ninguém bebe antes.
seen = A sua outra pergunta ({ $topic }): mande sozinha.
topic-boil = ferver
topic-dose = a dose
topic-dilute = limpeza
topic-storage = guardar
topic-well = o poco
topic-why = porque
set-language = Lingua: { $language }.
set-language-unknown = Ainda nao falo { $language }. Continuo em portugues.
set-units-metric = Unidades: litros e mL.
set-units-us = Unidades: galoes dos EUA.
set-units-imperial = Unidades: galoes imperiais.
help = Mande produto, % do rotulo, litros. Assim: 20 L turva, lixivia 5%. Também: ferver, poco, limpeza, teste de cloro, stock, guardar, MAIS, PORQUE, PARAR, ESQUECER.
greeting = matone diz como tornar a agua segura. Mande produto, % e litros, assim: 20 L turva, lixivia (agua sanitaria) 5%. Ou AJUDA.
stopped = Parado: nao mando mensagens que nao pediu. As suas perguntas continuam a ter resposta. INICIAR para voltar.
started = Mensagens ligadas. Mande produto, % e litros, assim: 20 L turva, lixivia 5%. Ou AJUDA.
dropped = Ja nao tenho anotado: { $product }.
forgotten = Tudo o que estava guardado de si foi apagado.
not-understood = Nao entendi. Mande produto, % e litros, assim: 20 L turva, lixivia (agua sanitaria) 5%. Ou AJUDA.
nothing-before = Primeiro peca uma dose. Mande produto, % e litros, assim: 20 L turva, lixivia 5%.
nothing-more = Era tudo. PORQUE mostra as fontes.
why = { $dose }{ $wait }{ $logs } Fontes: { $sources }.
why-dose = Resulta em { $mg } mg/L.
why-wait-rule = { " " }Espera: regra publicada.
why-wait-unknown = { " " }Espera: regra publicada, temperatura nao conhecida.
why-wait-cold = { " " }Espera: mais longa por ser agua fria.
why-wait-ct = { " " }Espera: tempo de contacto { $reached } de { $needed } mg.min/L precisos, contando com { $residual } mg/L.
why-logs = { " " }A { $celsius } C e pH { $ph }, com { $residual } mg/L: tempo de contacto { $reached } de { $needed } mg.min/L; virus { $viruses } log, Giardia { $giardia } log, Cryptosporidium nenhum.
why-boil = Algumas agencias pedem a fervura mais longa apenas em zonas altas, e a mundial apenas a fervura forte: mantenho a regra mais dura.
source-published = { $title } ({ $publisher }, { $year })
source-undated = { $title } ({ $publisher })
source-memory = { $title } ({ $publisher }; de memoria)
source-common = pratica comum sem fonte

## The printed chart: read from a wall, so no message of it has to fit an SMS

chart-title = Quanta lixívia torna a água segura
chart-caption = Ponha esta quantidade de lixívia líquida simples (água sanitária). O % deve ser o do seu frasco.
chart-water = Água
chart-bottle = Lixívia (água sanitária) { $percent }%
chart-clear = Clara
chart-cloudy-or-cold = Turva ou fria
chart-imperial-quarts = { $value } qt imp
chart-teaspoons = { $spoons } colher(es) de chá
chart-tablespoons = { $spoons } colher(es) de sopa
chart-or = ou { $way }
chart-then-wait = Depois espere
chart-wait-if-cold = fria: { $wait }
chart-legend = Meça apenas de uma forma: gotas, mL ou colheres. Colher de chá: rasa. Colher de sopa: rasa. Fria: fria na mão.

chart-step-add = Procure a sua água na tabela. Ponha essa quantidade de lixívia e mexa.
chart-step-wait = Espere o tempo que diz a última linha. Ninguém bebe antes.
chart-survive = A lixívia não mata { $list }.
chart-may-survive = { $list } pode sobreviver.

chart-caution-chemicals-stay = A lixívia não tira combustível, pesticidas, resíduos nem sal: procure outra água.
chart-caution-keep-from-children = Guarde a lixívia longe das crianças.
chart-caution-label-first = Se o frasco der instruções para água de beber, siga-as.
chart-caution-never-mix = Nunca misture com ácido ou amónia: gás.
chart-caution-old-bottle = Use um frasco com menos de um ano.
chart-caution-smell-check = Cheire. Tem de cheirar um pouco a cloro. Se não, ponha a mesma quantidade mais uma vez e espere de novo. Se ainda não cheirar, não beba.
chart-caution-strain-first = Água turva: deixe assentar, depois coe por um pano limpo.
chart-caution-too-murky = Água tão turva que não se leem letras através dela: não use lixívia, ferva-a.
chart-caution-unscented-only = Apenas lixívia simples: sem perfume, sem cor, não grossa, sem outro produto de limpeza.
chart-caution-weak-immunity-boil = Para bebés e pessoas com imunidade fraca: em vez disso ferva a água.

chart-sources = Fontes: { $sources }.
chart-printed = Impresso { $year }-{ $month }-{ $day }.

## Terminal and command line

terminal-greeting = matone: como tornar segura para beber a água que se tem. Siga primeiro o seu posto de saúde.
terminal-examples = Tente:  20 L turva, lixivia 1%  |  quanto tempo fervo a 2400 m  |  anote: a minha lixivia é 5%
terminal-bye = Fique bem.
