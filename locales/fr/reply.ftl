# What matone says in French.
#
# The program hands over every figure, already written out; no message may hold a figure of its
# own. Counts ending in -n only choose the plural form. Keep to the GSM 7-bit alphabet: é, è, à
# and ù are in it; other accents and the cedilla are left out, but for the chart- messages.
# A dose answer is a head and then cautions, as many as one SMS holds; the others wait for SUITE.

## Names

product-bleach = javel
product-bleaching_powder = chlorure de chaux
product-calcium_hypochlorite = hypochlorite de calcium
product-chlorine_dioxide = dioxyde de chlore
product-iodine_tablet = comprimés d'iode
product-iodine_tincture = teinture d'iode
product-nadcc = comprimés de chlore
product-povidone_iodine = povidone iodée

method-fire = faire bouillir
method-filter = un filtre
method-sunlight = le soleil en bouteilles transparentes

product-any = chlore

clarity-clear = { " " }claire
clarity-cloudy = { " " }trouble
# Said where the answer has no room for cloudy water and takes the water for clear.
clarity-assumed = { " " }si claire
warmth-cold = { " " }froide
warmth-celsius = { " " }à { $celsius } C

## Measures

volume-litres = { $value } L
volume-us-gallons = { $value } gal US
volume-us-quarts = { $value } qt US
volume-imperial-gallons = { $value } gal imp
label-percent = { " " }{ $value }%
label-mg = { " " }{ $value } mg

drops = { $drops-n ->
    [one] { $drops } goutte
   *[other] { $drops } gouttes
}
measure-drops = { $drops } ({ $ml } mL)
measure-ml = { $ml } mL
measure-ml-teaspoon = { $ml } mL ({ $spoons } c. à café)
measure-ml-tablespoon = { $ml } mL ({ $spoons } c. à soupe)
measure-later = Cela fait { $measure }.
tablets = { $count-n ->
    [one] { $count } comprimé
   *[other] { $count } comprimés
}
grams = { $grams } g
kilograms = { $kilograms } kg
metres = { $metres } m
minutes = { $value } min
hours = { $value } h
days = { $value } jours
days-n = { $days-n ->
    [one] { $value } jour
   *[other] { $value } jours
}

## A dose

echo = { $volume }{ $clarity }{ $warmth }, { $product }{ $label }
echo-remembered = { $volume }{ $clarity }{ $warmth }, { $product }{ $label } (retenu)
head-liquid = { $echo }: ajoutez { $measure }, remuez, attendez { $wait }.
head-liquid-cloudy = { $echo }: décantez, passez au tissu, ajoutez { $measure }, remuez, attendez { $wait }.
head-tablets = { $echo }: { $measure }, remuez, attendez { $wait }.
head-tablets-cloudy = { $echo }: décantez, passez au tissu, { $measure }, remuez, attendez { $wait }.
head-powder = { $echo }: dissolvez { $measure } dans un seau d'eau, versez dedans, remuez, attendez { $wait }.
head-powder-cloudy = { $echo }: décantez, passez au tissu. Dissolvez { $measure } dans un seau d'eau, versez dedans, remuez, attendez { $wait }.
head-stock = { $echo }: { $grams } + eau jusqu'à { $litres } = solution mère à { $percent }%. Ajoutez-en { $measure }, remuez, attendez { $wait }.
head-stock-cloudy = { $echo }: reposer, passer au tissu. { $grams } + eau jusqu'à { $litres } = solution à { $percent }%. Ajoutez-en { $measure }, remuez, attendez { $wait }.
head-label = { $echo }: mettez ce que dit son étiquette pour cette eau, remuez, attendez { $wait }.
head-label-cloudy = { $echo }: décantez, passez au tissu, mettez ce que dit son étiquette, remuez, attendez { $wait }.

if-cloudy-or-cold = Trouble: { $measure }, { $wait }; froide: meme dose, { $coldwait }.
head-new-tank = { $echo }. Cuve neuve ou sale d'abord: brossez, remplissez, mettez { $measure }, laissez { $wait }, videz. Ensuite la dose.
if-new-tank = Cuve neuve ou sale: brossez, remplissez, mettez { $measure }, laissez { $wait }, videz; ensuite la dose.
if-cloudy-or-cold-same = Trouble ou froide: { $measure }, { $wait }.
if-cloudy = Trouble: passez au tissu, { $measure }, { $wait }.
if-cold = Froide: { $measure }, { $wait }.
if-cold-wait = Froide: attendez { $wait }.

more-hint = SUITE
# Words that people may send next; each is one that the lexicon reads.
next-why = POURQUOI
next-remind = RAPPEL
next-help = AIDE

## Wells

head-well = Puits { $across }, eau { $depth } ({ $volume }): diluez { $measure } { $product } en seaux, versez, remuez, laissez { $wait }. NE PAS BOIRE avant pompage jusqu'à { $ready } mg/L.
head-well-cloudy = Videz, laissez clarifier. Puits { $across }, eau { $depth } ({ $volume }): diluez { $measure } { $product }, versez, remuez, laissez { $wait }. NE PAS BOIRE avant pompage à { $ready } mg/L.
well-wall = D'abord brossez la paroi avec { $ml } de ce produit dans { $litres } d'eau.
well-wall-stock = D'abord brossez la paroi avec { $ml } de solution mère à { $percent }% dans { $litres } d'eau.
well-hurry = Un puits demande { $wait }. Seulement en urgence { $emergency }, puis videz à la pompe et testez. Personne ne boit avant.
well-emergency = Seulement en urgence: { $wait } à la place.

## Solutions for hands, cleaning and stock

head-dilute-liquid = { $volume } à { $target }%: { $measure } { $product } + { $water } d'eau (une part + { $parts } parts d'eau).
head-dilute-as-is = { $volume } à { $target }%: prenez { $product } tel quel, n'ajoutez pas d'eau.
head-dilute-tablets = { $volume } à { $target }%: { $count } { $product } ({ $per } par litre), complétez d'eau jusqu'à { $volume }.
head-dilute-made-up = { $volume } à { $target }%: { $measure } { $product } ({ $per } par litre), complétez d'eau jusqu'à { $volume }.
dilute-hands = Pour les mains: pas pour les yeux, ne pas boire.
dilute-surfaces = Gardez les surfaces mouillées { $wait }, puis rincez. Ne pas boire.
dilute-stock = A refaire chaque jour. Ne pas boire telle quelle.
dilute-any-volume = Pour toute quantité: une part de produit + { $parts } parts d'eau.

## Chlorine tests

residual-enough = { $reading } mg/L suffit (au moins { $least }). Gardez-la couverte et buvez-la dans les { $keeps }.
residual-enough-at-use = { $reading } mg/L. { $retest } après la dose: trop peu (au moins { $aim }), ne pas boire. Dans le bidon où l'on boit, jusqu'à { $keeps }: assez (au moins { $atuse }). Lequel?
residual-low = { $reading } mg/L est trop peu, au moins { $aim }. Ne pas boire: ajoutez du chlore, attendez { $retest }, retestez. Pour la quantité envoyez litres, produit et %.
residual-add = { $reading } mg/L est trop peu. A { $volume } ajoutez { $measure } { $product }, remuez, attendez { $wait }, retestez: au moins { $aim } mg/L avant de boire.
residual-add-zero = { $reading } mg/L. Jamais traitée? Demandez la dose. Déjà dosée: à { $volume } ajoutez { $measure } { $product }, remuez, attendez { $wait }, retestez: { $aim } mg/L avant de boire.
residual-add-stock = { $reading } mg/L: trop peu. { $grams } { $product } + eau jusqu'à { $litre } = solution à { $percent }%: à { $volume } ajoutez-en { $measure }, attendez { $wait }, retestez: { $aim } mg/L.
residual-add-zero-stock = { $reading } mg/L. Jamais traitée? Demandez la dose. Déjà dosée: { $grams } { $product } + eau jusqu'à { $litre } = { $percent }%; à { $volume } ajoutez-en { $measure }, attendez { $wait }, retestez.
residual-too-early = { $reading } mg/L, mais trop tot pour savoir. Retestez { $retest } après la dose: au moins { $aim } mg/L.
residual-high = { $reading } mg/L est trop pour chaque jour (au plus { $most }). Laissez ouvert ou transvasez entre bidons propres, retestez.
residual-too-high = { $reading } mg/L, c'est trop: ne la buvez pas encore. Laissez ouvert ou transvasez entre bidons propres jusqu'à { $most } mg/L ou moins.
residual-stale = { $reading } mg/L, et traitée il y a plus de { $keeps }: traitez-la de nouveau avant de boire.
residual-no-kit = Sans kit: { $retest } après la dose, elle doit sentir un peu le chlore. Aucune odeur: encore une fois la meme dose, attendez { $retest }. Toujours rien: ne pas boire.
residual-already-dosed = Déjà dosée: n'ajoutez plus rien. { $retest } après la dose, elle doit sentir un peu le chlore. Odeur forte ou trop mis: ne pas boire, prenez une autre eau.
residual-still-no-smell = Toujours aucune odeur: ne pas boire, ne plus rien ajouter. Faites bouillir, ou trouvez une eau plus claire et dosez celle-là.
residual-no-smell = Aucune odeur: remettez une fois la meme dose, attendez { $retest }, sentez. Toujours pas d'odeur de chlore: ne pas boire. Faites bouillir ou trouvez eau plus claire.
residual-smells = Une légère odeur de chlore après l'attente est bonne: buvez. Si elle est forte, laissez ouvert ou transvasez entre bidons propres.
residual-well-not-ready = { $reading } mg/L: le puits n'est pas pret. NE PAS BOIRE. Pompez encore jusqu'à { $ready } mg/L ou moins. Puis, jusqu'à une bonne analyse, traitez son eau avant de boire.
residual-well-ready = { $reading } mg/L: puits assez pompé ({ $ready } ou moins). Jusqu'à une bonne analyse, continuez à traiter son eau avant de boire.
residual-zero = Encore zéro? L'eau mange le chlore: clarifiez-la, ou essayez des doses en seaux (test des seaux).

## Jar test

jar-found = Test des seaux: { $dose } dans { $jar } laisse { $aim } mg/L. Soit { $each } de la meme solution par { $thousand }. Envoyez les litres de la cuve pour sa dose.
jar-found-tank = Test des seaux: { $dose } dans { $jar } laisse { $aim } mg/L. Pour { $tank }: { $measure } de la meme solution, remuez, attendez { $wait }, retestez.
jar-all-above = Tous les seaux dépassent { $aim } mg/L: refaites le test avec moins dans chaque { $jar }.
jar-all-below = Aucun seau n'atteint { $aim } mg/L: refaites le test avec plus dans chaque { $jar }.
jar-how-to = Test des seaux: { $doses } mL de solution à { $percent }% dans quatre seaux de { $jar }, remuez, attendez { $wait }, testez chacun. Envoyez mL et résultat de chacun. Visez { $aim } mg/L.
jar-uneven = Plus de solution doit laisser plus de chlore; ces mesures montent et descendent. Refaites le test des seaux.

## Stock and people

people = { $people-n ->
    [one] { $people } personne
   *[other] { $people } personnes
}
supply-clear-water = eau claire
supply-cloudy-water = eau trouble
stock-counted = { $count } { $product }
stock-measured = { $amount } { $product }
supply-treats = { $stock }: traite environ { $litres } d'{ $water }.
supply-lasts = { $stock }: environ { $days } pour { $people } à { $each } chacun par jour ({ $drinkingdays } si seulement pour boire, { $drinking }).
supply-serves = { $stock }: environ { $people } pendant { $days } à { $each } chacun par jour ({ $drinkingpeople } si seulement pour boire, { $drinking }).
supply-needs = { $people }, { $days }, { $each } chacun par jour = { $litres } d'{ $water }: { $need }. Commandez { $measure } ({ $margin }% de marge).
supply-counted-cloudy = Compté pour eau trouble.
supply-ages = Mais se garde { $months } mois seulement.
supply-if-cloudy = L'eau trouble en prend le double.

## Keeping

storage-water = Gardez l'eau traitée couverte, bidon propre à col étroit. Versez, ou robinet ou louche: pas les mains. A boire dans les { $keeps }, puis retraitez.
storage-hands = Si des mains ou une tasse sale y ont touché, traitez-la de nouveau.
storage-rinse = Avant de remplir, rincez le bidon: { $ml } de javel dans { $litre } d'eau, { $seconds } secondes.
storage-product = { $product }: gardez fermé, au frais, à l'ombre, hors de portée des enfants, loin des acides et autres nettoyants. Remplacez après { $months } mois.
storage-product-by-pack = { $product }: gardez fermé, au frais, au sec, à l'ombre, hors de portée des enfants. Pas après la date du paquet.

## Boiling, sun, filters

head-boil = Portez à gros bouillons, laissez bouillir { $wait }, laissez refroidir couvert.
head-boil-cloudy = Décantez, passez au tissu, portez à gros bouillons, laissez bouillir { $wait }, laissez refroidir couvert.
if-high = Plus haut que { $altitude } m ou en montagne: { $wait }.
boiling-point = A { $altitude } m l'eau bout à { $celsius } C: assez chaud pour tuer tous les microbes de l'eau à boire.
head-sun = Bouteilles transparentes jusqu'à { $size } au soleil: { $wait }.
head-sun-unsure = Bouteilles transparentes jusqu'à { $size }: { $sunny } si grand soleil toute la journée, sinon { $wait }. Pas sous la pluie.
head-sun-rain = Sous la pluie le soleil ne rend pas l'eau bonne. Faites bouillir ou mettez du chlore. Ou recueillez de l'eau de pluie propre et traitez-la.
fill-and-shake = Remplir aux trois quarts, secouer, compléter, coucher à plat.
head-filter = Un filtre de { $pore } um{ $stops }{ $passes }.
head-filter-unknown = Un filtre aux pores inconnus{ $stops }{ $passes }. Cherchez dessus le chiffre en um.
filter-stops = { " " }arrete { $list }
filter-passes-after-stops = ; pas { $list }
filter-passes-only = { " " }n'arrete pas { $list }
reason-kills-all = Bouillir tue tous les microbes, meme dans l'eau boueuse ou froide.
reason-nothing-else = Rien de ce que vous avez ne la rend bonne; le feu, si.
reason-only-one = C'est la seule chose citée qui marche ici.
reason-two-barriers = Deux étapes protègent mieux qu'une.
reason-widest-cover = De ce que vous avez, il arrete le plus.
head-choose = Le mieux ici: { $first }.
head-choose-then = Le mieux ici: { $first }. Si pas possible: { $second }.
head-choose-nothing = Le mieux: { $first }. Dites-moi ce que vous avez: javel, comprimés, iode, filtre, soleil.
method-pair = { $one }, puis { $two }

organism-bacteria = bactéries
organism-viruses = virus
organism-giardia = Giardia
organism-cryptosporidium = Cryptosporidium
organism-some = une partie des { $what }
list-two = { $one } et { $two }
list-two-or = { $one } ou { $two }
list-more = { $one }, { $rest }

## Cautions: one short sentence each

caution-absolute-pore = Le chiffre doit etre absolu (ou garanti pour kystes), pas nominal.
caution-bottle-size = Prenez des bouteilles PET transparentes, pas de verre ni de gros bidons.
caution-clean-tank-first = Cuve propre d'abord; jamais une qui a contenu carburant ou eaux usées.
caution-cool-and-dark = Gardez au frais et à l'ombre.
caution-danger-signs = Sang, yeux creux, pas d'urine, très faible: au centre de santé maintenant.
caution-fresh-daily = A refaire chaque jour.
caution-gloves-and-air = Gants, portes ouvertes, attention aux yeux.
caution-keep-from-children = Hors de portée des enfants.
caution-keep-treating = Continuez à traiter l'eau du puits jusqu'à une bonne analyse.
caution-let-stand = Trop fort? Laissez ouvert ou transvasez entre bidons propres.
caution-narrow-neck = Bidon couvert, col étroit, pas de mains.
caution-never-mix = Jamais avec acide ou ammoniaque: gaz.
caution-not-for-drinking = Ne pas boire.
caution-not-until-pumped = Ne pas boire avant pompage et test.
caution-rehydrate = SRO à petites gorgées.
caution-retest-later = Retestez après l'attente.
caution-stir-tank = Dosez pendant le remplissage ou remuez bien; robinets fermés pendant l'attente.
caution-tablet-too-strong = Comprimé trop fort: traitez plus d'eau avec.
caution-well-clear-first = Puits boueux: videz-le d'abord, laissez l'eau devenir claire.
caution-well-ph = A ce pH le choc au chlore marche mal: demandez au service de l'eau.
caution-chemicals-stay = Produits chimiques et sel restent.
caution-cold-takes-longer = Plus long si froide.
caution-cryptosporidium-survives = Cryptosporidium survit.
caution-fresh-air = Gaz: sortez à l'air frais.
caution-giardia-partly = Giardia peut survivre.
caution-higher-boil-longer = En altitude: bouillir plus longtemps.
caution-iodine-unsuitable = Pas si enceinte, thyroide, bébé, long usage.
caution-leptospira-passes = Leptospira traverse.
caution-label-first = Si son étiquette donne une dose pour eau à boire, suivez-la.
caution-no-shorter-wait = Ne raccourcissez pas l'attente.
caution-medical-help = Au centre de santé maintenant.
caution-no-vomiting = Ne faites pas vomir.
caution-rinse-with-water = Rincez à l'eau.
caution-not-in-rain = Pas sous la pluie.
caution-old-bottle = Votre bouteille a plus d'un an: prenez-en une neuve.
caution-pore-unknown = Pores inconnus: ne comptez pas sur lui seul.
caution-smell-check = Après l'attente, elle doit sentir un peu le chlore; sinon, une fois encore la meme dose et attendez; toujours pas: ne pas boire.
caution-second-method = Ajoutez une deuxième méthode.
caution-sewage = Eaux usées: faites bouillir si possible.
caution-spores-survive = Des spores résistent sans pression: pas pour instruments stériles.
caution-strain-first = Laissez d'abord reposer et passez au tissu.
caution-print-test = On doit pouvoir lire un texte à travers la bouteille pleine.
caution-lower-figure = J'ai pris le plus petit chiffre de l'étiquette.
caution-too-murky = Si on ne peut pas lire à travers, faites bouillir.
caution-unscented-only = Javel simple seulement.
caution-viruses-pass = Les virus passent: bouillir ou chlorer aussi.
caution-weak-immunity-boil = Bébés ou défenses faibles: bouillir.
caution-two-days = Soleil incertain? Laissez les deux jours.

extra-lower-figure = Plus petit chiffre pris.
extra-old-bottle = Vieille bouteille: prenez neuf.
extra-see-health-worker = Malades: soignant et SRO maintenant.

covers = Tue: bactéries { $bacteria }, virus { $viruses }, Giardia { $giardia }, Cryptosporidium { $cryptosporidium }.
boil-kills-all = Bouillir les tue tous.
cover-yes = oui
cover-partly = en partie
cover-no = non
defer = Les règles de votre service de santé passent d'abord.

## Changed doses

adjusted-faster = { $echo }. Seulement si claire et pas froide: { $measure } en tout, attendez { $wait }. Plus de gout, pas plus de sécurité.
adjusted-weaker = { $echo }. La prochaine fois, seulement si claire et pas froide: { $measure }, attendez { $wait }. Cette eau-ci: laissez ouvert.
cannot-faster = On ne peut pas raccourcir sans danger. Plus vite: gros bouillons, puis refroidir.
of-solution = Ne JAMAIS la boire: seulement pour nettoyer. A refaire chaque jour, fermée, marquée, loin des enfants. Eau à boire: envoyez les litres et le % de la bouteille.
too-strong = Trop de chlore? Laissez ouvert des heures ou transvasez entre bidons propres. Ne raccourcissez jamais l'attente. Si on en a bu et va mal: au centre de santé.
cannot-weaker = En mettre moins serait dangereux, ne le faites pas. Contre le gout: laissez ouvert, ou transvasez entre bidons propres, après l'attente.

## Questions

ask-product = Quel produit avez-vous: javel, comprimés de chlore, poudre de chlore ou iode?
ask-product-chlorine = Quel chlore avez-vous: javel, hypochlorite de calcium ou chlorure de chaux?
ask-product-unfit-for-well = Ce n'est pas pour un puits. Avez-vous javel, hypochlorite de calcium ou chlorure de chaux?
ask-product-unfit-for-cleaning = Ce n'est pas pour cela. Avez-vous javel, poudre de chlore ou comprimés de chlore?
ask-product-unfit-for-residual = Cela n'augmente pas le chlore. Avez-vous javel, poudre de chlore ou comprimés de chlore?
ask-product-unfit-for-supply = Combien il traite est sur son étiquette. Quel autre produit avez-vous: javel, poudre de chlore, comprimés de chlore ou iode?
ask-product-bleach-tablet = Que contiennent ces comprimés? Envoyez ce que dit l'étiquette, avec les mg. Ils doivent etre faits pour l'eau à boire.
ask-product-chlorine-form = Ce chlore est-il liquide, en poudre ou en comprimés? Envoyez-le avec le % ou les mg de l'étiquette.
ask-product-iodine-form = Quel iode: teinture, povidone iodée ou comprimés?
ask-product-pool = Le chlore de piscine peut etre stabilisé: pas pour l'eau à boire. Avez-vous javel simple, comprimés pour eau à boire ou iode? Sinon faites bouillir.
ask-product-powder-form = Quelle poudre: hypochlorite de calcium ou chlorure de chaux? Envoyez le % de l'étiquette.
ask-product-spoiled = Javel parfumée, épaisse ou colorée: pas pour l'eau à boire. Avez-vous javel simple, comprimés ou iode? Sinon faites bouillir.
ask-product-tablet-form = Comprimés de chlore ou d'iode? Envoyez le nom et les mg de la plaquette.
ask-product-two-products = Il y a plus d'un produit. Lequel allez-vous utiliser?

ask-strength = Quel % est sur l'étiquette ({ $product })?
ask-strength-no-label = Sans le % je ne donne pas de dose. Une autre bouteille avec étiquette? Sinon gros bouillons, puis refroidir. Sans feu, envoyez: pas d'étiquette pas de feu.
ask-strength-degrees = Quel % est sur l'étiquette ({ $product })? Les degrés peuvent dire deux choses.
ask-strength-denied = Alors quel % est-ce? Lisez-moi l'étiquette ({ $product }).
ask-strength-bound = Quel % exact est sur l'étiquette ({ $product })? "Moins de" ne suffit pas pour une dose.
ask-strength-guessed = Regardez l'étiquette ({ $product }): quel % y est imprimé?
ask-strength-outside = { $product }: cette force n'existe pas. Quel % est imprimé sur l'étiquette?
ask-strength-is-target = Cela, c'est pour l'eau. Quel % est imprimé sur l'étiquette ({ $product })?
ask-strength-is-solution = C'est une force pour nettoyer. Quel % est imprimé sur l'étiquette ({ $product })?
ask-strength-thinned = { $product } coupé d'eau: force inconnue, pas de dose. Quel % sur l'étiquette d'une bouteille neuve ou non coupée? S'il n'y en a aucune, faites bouillir.
ask-strength-two = Deux % différents. Lequel est imprimé sur l'étiquette ({ $product })?
ask-strength-unreadable = Je ne peux pas lire le %. Renvoyez-le, comme: 3,5%
ask-strength-wide = L'écart est trop large. Quel % exact est sur l'étiquette ({ $product })?

ask-tablet = Combien de mg fait un comprimé? C'est sur la plaquette ou la boite.
ask-tablet-compound = Est-ce le mg d'iode? On imprime souvent celui du composé. Combien de mg d'iode libère un comprimé?
ask-tablet-two = Deux tailles de comprimé. Quel mg allez-vous utiliser?
ask-tablet-outside = Ce n'est pas un comprimé pour eau à boire que je connais. Combien de mg sont imprimés sur la plaquette?

ask-volume = Combien de litres d'eau voulez-vous traiter?
ask-volume-uncounted = Combien de litres en tout?
ask-volume-unsized = Combien de litres contient-il? (seaux et bidons varient)
ask-volume-outside = Je ne peux pas utiliser cette quantité. Combien de litres d'eau voulez-vous traiter?
ask-volume-two = Plus d'une quantité d'eau. Combien de litres voulez-vous traiter en une fois?
ask-volume-unreadable = Je ne peux pas lire la quantité sans doute. Combien de litres d'eau? Ecrivez sans point ni virgule, comme: 1000 L

ask-volume-solution = Combien de litres de solution voulez-vous préparer?
ask-volume-tank = Combien de litres d'eau y a-t-il dedans?
ask-jar = Combien de litres d'eau y avait-il dans chaque seau?

ask-diameter = Quelle est la largeur du puits, en mètres?
ask-diameter-outside = Je ne peux pas utiliser cette largeur. Combien de mètres de large a le puits?
ask-depth = Quelle hauteur d'eau dans le puits, en mètres? Descendez une pierre au bout d'une corde et mesurez la partie mouillée.
ask-well-depth-only = C'est le puits. Quelle hauteur d'EAU y a-t-il dedans, en mètres? Descendez une pierre sur une corde et mesurez la partie mouillée.
ask-water-depth-outside = Je ne peux pas utiliser cette hauteur. Combien de mètres d'eau y a-t-il dans le puits?
ask-target = Quelle force? Mains { $hands }%, sols { $floors }%, sang { $blood }%, vomi ou selles de choléra { $stools }%. Votre service de santé peut dire autrement.
ask-target-outside = Je ne peux pas utiliser cette force. Quel % pour la solution? Mains { $hands }%, sols { $floors }%, sang { $blood }%.
ask-target-too-strong = Votre produit ({ $product }) est plus faible que cela. Quel % pour la solution? Mains { $hands }%, sols { $floors }%, sang { $blood }%.
ask-residual = Que montre le test, en mg/L (ou ppm)?
ask-people = C'est pour combien de personnes?
ask-people-outside = Je ne peux pas utiliser ce nombre. C'est pour combien de personnes?
ask-days = Pour combien de jours? (Ou dites combien vous en avez.)
ask-days-outside = Je ne peux pas utiliser cela. Pour combien de jours?
ask-stock-liquid = Combien de litres avez-vous ({ $product })? Ou: pour combien de personnes et de jours?
ask-stock-powder = Combien de kg ou g avez-vous ({ $product })? Ou: pour combien de personnes et de jours?
ask-stock-tablets = Combien de comprimés avez-vous? Ou: pour combien de personnes et de jours?
ask-stock-outside = Je ne peux pas utiliser cette quantité. Combien en avez-vous ({ $product })?

last-resort = DERNIER RECOURS, % inconnu: { $drops } par L, attendez { $wait }. Sans odeur de chlore répétez une fois, attendez; toujours pas d'odeur: ne pas boire.
last-resort-total = DERNIER RECOURS, % inconnu: { $total } en tout ({ $drops }/L), attendez { $wait }. Sans odeur de chlore répétez une fois, attendez; toujours pas: ne pas boire.

## No dose

refused-chemical = Pas de dose: chlore, iode, bouillir, filtres n'enlèvent pas carburant, pesticide, déchets ni sel. Ne pas boire. Trouvez autre eau, prévenez le service de santé.
refused-iodine_unsuitable = Pas d'iode si grossesse, thyroide malade, bébés ou plus de quelques semaines. A la place bouillir, ou javel simple: envoyez son % et les litres.
refused-mixed = DANGER: ne jamais mélanger javel et acide, vinaigre, ammoniaque ou nettoyants: gaz toxique. Ouvrez, sortez à l'air. Javel simple et eau seulement.
refused-other_use = Je réponds seulement pour l'eau à boire et le nettoyage. Plaies, yeux, dialyse, poissons, piscines, linge, aliments: demandez à un soignant.
refused-over_limit = Plus du double de la dose: l'eau n'est pas bonne à boire.

## Somebody hurt or ill

first-aid = AU CENTRE DE SANTÉ MAINTENANT. Avalé: rincer bouche, petites gorgées d'eau si éveillé, NE PAS faire vomir. Oeil, peau: rincer { $rinse } à l'eau. Gaz: air frais.
first-aid-powder = CENTRE DE SANTÉ MAINTENANT. Avalé: rincer bouche, gorgées d'eau si éveillé, NE PAS faire vomir. Peau: essuyer à sec. Oeil, peau: rincer { $rinse }. Gaz: air frais.
# Before first aid, where the deployment names a number to call.
help-line = Appelez le { $number }.
first-aid-then = Ensuite redemandez.
unsure = Avalé ou projeté? Alors rincez, NE PAS faire vomir, allez au centre de santé. Si vous voulez seulement la dose, envoyez juste produit, % et litres.
illness = SRO à petites gorgées, allaitez toujours. Au centre de santé TOUT DE SUITE si sang, yeux creux, pas d'urine, très faible ou ne peut boire. Pas un diagnostic.
illness-danger = AU CENTRE DE SANTÉ MAINTENANT. Rien par la bouche si inconscient ou ne peut pas avaler. Eveillé: SRO à petites gorgées en route, allaitez. Pas un diagnostic.
illness-feeding = Préparez le SRO comme dit le sachet, avec de l'eau traitée. Continuez à nourrir.
illness-water = Traitez maintenant toute l'eau à boire, lavez les mains au savon, alertez le service de santé si plus d'un est malade.

## Service

kept = Retenu: { $product }{ $label }. Maintenant envoyez seulement les litres.
kept-part = Retenu: { $product }. Quel % ou mg sur l'étiquette? Envoyez: retenez { $product } ...
kept-figure = Retenu:{ $label }. Quel produit est-ce?
not-kept = Je n'ai pas retenu cela: produit et force pas certains. Envoyez comme: retenez javel 5%
kept-opened = Ouverte le { $date }.
kept-future = { $date } est encore à venir. Quand a-t-elle été ouverte? Envoyez comme: ouverte le 1 mars 2026.
bottle = { $bottle }.
bottles = Je retiens: { $list }
bottles-none = Je ne retiens aucune bouteille de vous. Envoyez comme: retenez javel 5%, 1 L
left = Reste: { $amount }, traite { $litres }.
left-amount = Reste: { $amount }.
left-days = A votre rythme { $days }: procurez-vous-en maintenant.
left-short = Selon mon compte il ne reste que { $amount } dans votre bouteille.
left-empty = Selon mon compte elle est vide: procurez-vous-en.
age-soon = Utilisez-la bientot: elle se garde { $months } mois.
age-now = Elle a plus de { $months } mois: prenez-en une neuve.
age-estimate = Estimation: il reste environ { $percent }% de sa force si gardée à { $celsius } C. La dose ne compte pas dessus: vérifiez l'odeur.
undone = Pas compté. { $left }
nothing-to-undo = Je n'ai compté aucune dose de vous aujourd'hui.
will-remind = Je vous écrirai dans { $wait }.
nothing-to-wait-for = Il n'y a pas d'attente à rappeler. Demandez d'abord une dose.
reminder-chlorine = Temps passé ({ $wait }). Eau trouble ou froide? Attendez plus. Sentez: légère odeur de chlore, c'est bon. Aucune odeur: encore une fois la meme dose, attendez.
reminder-disinfectant = Temps passé ({ $wait }): bonne à boire. Si l'eau était trouble ou froide, attendez plus.
reminder-retest = Temps passé ({ $wait }): retestez le chlore avant que quelqu'un boive.
reminder-sun = Temps passé ({ $wait }). S'il y avait grand soleil, bonne à boire; sinon ne pas boire, laissez plus longtemps.
reminder-surface = Temps passé ({ $wait }): rincez la surface.
reminder-well = Temps passé ({ $wait }): videz le puits à la pompe, puis testez. Personne ne boit avant.
seen = Votre autre question ({ $topic }): envoyez-la seule.
topic-boil = bouillir
topic-dose = la dose
topic-dilute = nettoyage
topic-storage = conserver
topic-well = le puits
topic-why = pourquoi
set-language = Langue: { $language }.
set-language-unknown = Je ne parle pas encore { $language }. Je continue en francais.
set-units-metric = Unités: litres et mL.
set-units-us = Unités: gallons US.
set-units-imperial = Unités: gallons impériaux.
help = Envoyez produit, % étiquette, litres. Ex: 20 L trouble, javel 5%. Aussi: bouillir, puits, nettoyage, test chlore, stock, garder, SUITE, POURQUOI, STOP, OUBLIER.
greeting = matone dit comment rendre l'eau bonne à boire. Envoyez produit, % et litres, comme: 20 L trouble, javel 5%. Ou AIDE.
stopped = Arreté: pas de messages non demandés. Vos questions ont toujours réponse. DEBUT pour reprendre.
started = Messages en marche. Envoyez produit, % et litres, comme: 20 L trouble, javel 5%. Ou AIDE.
dropped = Je ne retiens plus: { $product }.
forgotten = Tout ce qui était gardé sur vous est effacé.
not-understood = Je n'ai pas compris. Envoyez produit, % et litres, comme: 20 L trouble, javel 5%. Ou AIDE.
nothing-before = Demandez d'abord une dose. Envoyez produit, % et litres, comme: 20 L trouble, javel 5%.
nothing-more = C'était tout. POURQUOI donne les sources.
why = { $dose }{ $wait }{ $logs } Sources: { $sources }.
why-dose = Apporte { $mg } mg/L.
why-wait-rule = { " " }Attente: règle publiée.
why-wait-unknown = { " " }Attente: règle publiée, température pas connue.
why-wait-cold = { " " }Attente: plus longue pour eau froide.
why-wait-ct = { " " }Attente: temps de contact { $reached } sur { $needed } mg.min/L voulus, en comptant { $residual } mg/L.
why-logs = { " " }A { $celsius } C et pH { $ph }, en comptant { $residual } mg/L: contact { $reached } sur { $needed } mg.min/L; virus { $viruses } log, Giardia { $giardia } log, Cryptosporidium aucun.
why-boil = Certaines agences ne demandent l'ébullition longue qu'en altitude, et l'organisme mondial seulement les gros bouillons: je garde la règle la plus stricte.
source-published = { $title } ({ $publisher }, { $year })
source-undated = { $title } ({ $publisher })
source-memory = { $title } ({ $publisher }; de mémoire)
source-common = pratique courante sans source

## The printed chart: read from a wall, so no message of it has to fit an SMS

chart-title = Combien de javel pour rendre l'eau bonne à boire
chart-caption = Ajoutez cette quantité de javel liquide simple. Le % doit être celui de votre bouteille.
chart-water = Eau
chart-bottle = Javel { $percent }%
chart-clear = Claire
chart-cloudy-or-cold = Trouble ou froide
chart-imperial-quarts = { $value } qt imp
chart-teaspoons = { $spoons } c. à café
chart-tablespoons = { $spoons } c. à soupe
chart-or = ou { $way }
chart-then-wait = Puis attendre
chart-wait-if-cold = froide : { $wait }
chart-legend = Mesurez d'une seule façon seulement : gouttes, mL ou cuillères. Cuillère à café et à soupe : rases. Froide : froide à la main.

chart-step-add = Trouvez votre eau dans le tableau. Ajoutez cette quantité de javel et remuez.
chart-step-wait = Attendez le temps de la dernière ligne. Personne ne boit avant.
chart-survive = La javel ne tue pas { $list }.
chart-may-survive = { $list } : peut survivre.

chart-caution-chemicals-stay = La javel n'enlève pas carburant, pesticides, déchets ni sel : trouvez une autre eau.
chart-caution-keep-from-children = Gardez la javel loin des enfants.
chart-caution-label-first = Si la bouteille donne un mode d'emploi pour l'eau à boire, suivez-le.
chart-caution-never-mix = Ne jamais mélanger avec un acide ou de l'ammoniaque : gaz.
chart-caution-old-bottle = Prenez une bouteille de moins d'un an.
chart-caution-smell-check = Sentez l'eau : elle doit sentir un peu le chlore. Sinon, ajoutez une fois encore la même quantité et attendez de nouveau. Si elle ne sent toujours pas le chlore, ne la buvez pas.
chart-caution-strain-first = Eau trouble : laissez reposer, puis passez-la à travers un tissu propre.
chart-caution-too-murky = Eau trop trouble pour lire un texte à travers : pas de javel, faites-la bouillir.
chart-caution-unscented-only = Javel simple seulement : sans parfum, sans couleur, pas épaisse, sans autre nettoyant.
chart-caution-weak-immunity-boil = Pour les bébés et les personnes aux défenses faibles : faites plutôt bouillir l'eau.

chart-sources = Sources : { $sources }.
chart-printed = Imprimé le { $day }/{ $month }/{ $year }.

## Terminal and command line

terminal-greeting = matone : comment rendre potable l'eau dont on dispose. Suivez d'abord votre service de santé.
terminal-examples = Essayez :  20 L trouble javel 5%  |  bouillir combien de temps à 2400 m  |  retenez javel 5%
terminal-bye = Portez-vous bien.
