# What matone says in English.
#
# The program hands over every figure, already written out; no message may hold a figure of its
# own. Counts ending in -n only choose the plural form. Keep to the GSM 7-bit alphabet.
# A dose answer is a head and then cautions, as many as one SMS holds; the others wait for MORE.

## Names

product-bleach = bleach
product-bleaching_powder = bleaching powder
product-calcium_hypochlorite = calcium hypochlorite
product-chlorine_dioxide = chlorine dioxide
product-iodine_tablet = iodine tablets
product-iodine_tincture = iodine tincture
product-nadcc = chlorine tablets
product-povidone_iodine = povidone-iodine

method-fire = boiling
method-filter = a filter
method-sunlight = sun in clear bottles

clarity-clear = { " " }clear
clarity-cloudy = { " " }cloudy
warmth-cold = { " " }cold
warmth-celsius = { " " }at { $celsius } C

## Measures

volume-litres = { $value } L
volume-us-gallons = { $value } US gal
volume-us-quarts = { $value } US qt
volume-imperial-gallons = { $value } imp gal
label-percent = { " " }{ $value }%
label-mg = { " " }{ $value } mg

drops = { $drops-n ->
    [one] { $drops } drop
   *[other] { $drops } drops
}
measure-drops = { $drops } ({ $ml } mL)
measure-ml = { $ml } mL
measure-ml-teaspoon = { $ml } mL ({ $spoons } tsp)
measure-ml-tablespoon = { $ml } mL ({ $spoons } tbsp)
tablets = { $count-n ->
    [one] { $count } tablet
   *[other] { $count } tablets
}
grams = { $grams } g
minutes = { $value } min
hours = { $value } h
days = { $value } days

## A dose

echo = { $volume }{ $clarity }{ $warmth }, { $product }{ $label }
echo-remembered = { $volume }{ $clarity }{ $warmth }, your { $product }{ $label }
head-liquid = { $echo }: add { $measure }, stir, wait { $wait }.
head-liquid-cloudy = { $echo }: settle, strain, add { $measure }, stir, wait { $wait }.
head-tablets = { $echo }: { $measure }, stir, wait { $wait }.
head-tablets-cloudy = { $echo }: settle, strain, { $measure }, stir, wait { $wait }.
head-powder = { $echo }: dissolve { $measure } in a bucket of water, pour in, stir, wait { $wait }.
head-powder-cloudy = { $echo }: settle, strain. Dissolve { $measure } in a bucket of water, pour in, stir, wait { $wait }.
head-stock = { $echo }: { $grams } made up to { $litres } = { $percent }% stock. Add { $measure } of it, stir, wait { $wait }.
head-stock-cloudy = { $echo }: settle, strain. { $grams } made up to { $litres } = { $percent }% stock. Add { $measure }, stir, wait { $wait }.
head-label = { $echo }: add what its label says for this water, stir, wait { $wait }.
head-label-cloudy = { $echo }: settle, strain, add what its label says, stir, wait { $wait }.

if-cloudy-or-cold = Cloudy or cold: { $measure }, { $wait } (cold { $coldwait }).
if-cloudy-or-cold-same = Cloudy or cold: { $measure }, { $wait }.
if-cloudy = Cloudy: strain, { $measure }, { $wait }.
if-cold = Cold: { $measure }, { $wait }.
if-cold-wait = Cold: wait { $wait }.

more-hint = MORE

## Boiling, sun, filters

head-boil = Bring to a rolling boil, keep it boiling { $wait }, let it cool covered.
head-boil-cloudy = Settle and strain, bring to a rolling boil, keep it boiling { $wait }, let it cool covered.
if-high = Above { $altitude } m or in the mountains: { $wait }.
boiling-point = At { $altitude } m water boils at { $celsius } C: hot enough to kill all germs of drinking water.
head-sun = Clear bottles up to { $size }, full sun: { $wait }.
head-sun-unsure = Clear bottles up to { $size }: { $sunny } if bright all day, otherwise { $wait }. Not in rain.
head-sun-rain = Sun does not make water safe in rain. Boil, or use chlorine. Or collect clean rainwater and treat it.
fill-and-shake = Fill three quarters, shake, top up, lay flat.
head-filter = A { $pore } um filter{ $stops }{ $passes }.
head-filter-unknown = A filter of unknown pore size{ $stops }{ $passes }. Look for the um figure on it.
filter-stops = { " " }stops { $list }
filter-passes-after-stops = ; not { $list }
filter-passes-only = { " " }does not stop { $list }
head-choose = Best here: { $first }.
head-choose-then = Best here: { $first }. If not possible: { $second }.
head-choose-nothing = Best: { $first }. Tell me what you have: bleach, tablets, iodine, a filter, sun.
method-pair = { $one }, then { $two }

organism-bacteria = bacteria
organism-viruses = viruses
organism-giardia = Giardia
organism-cryptosporidium = Cryptosporidium
organism-some = some { $what }
list-two = { $one } and { $two }
list-more = { $one }, { $rest }

## Cautions: one short sentence each

caution-absolute-pore = The figure must be absolute (or cyst-rated), not nominal.
caution-bottle-size = Use clear PET bottles, not glass jugs or big cans.
caution-chemicals-stay = Chemicals and salt stay in.
caution-cold-takes-longer = Longer if cold.
caution-cryptosporidium-survives = Cryptosporidium survives.
caution-fresh-air = Gas: out into fresh air.
caution-giardia-partly = Giardia may survive.
caution-higher-boil-longer = High up: boil longer.
caution-iodine-unsuitable = Not for pregnancy, thyroid disease, babies, long use.
caution-leptospira-passes = Leptospira swims through.
caution-label-first = If its label gives a drinking-water dose, follow that.
caution-no-shorter-wait = Do not shorten the wait.
caution-medical-help = Get medical help now.
caution-no-vomiting = Do not make the person vomit.
caution-rinse-with-water = Rinse with water.
caution-not-in-rain = Not in rain.
caution-old-bottle = Your bottle is over a year old: get fresh.
caution-pore-unknown = Pore size unknown: do not rely on it alone.
caution-smell-check = After the wait it must smell faintly of chlorine; if not, repeat the same dose once and wait again; if still not, do not drink it.
caution-second-method = Use a second method too.
caution-sewage = Sewage: boil it if at all possible.
caution-spores-survive = Heat-proof spores need pressure: not for sterile instruments.
caution-strain-first = Let it settle and strain it first.
caution-print-test = You must be able to read print through the full bottle.
caution-lower-figure = I took the lower figure of the label.
caution-too-murky = If you cannot read print through it, boil it.
caution-unscented-only = Plain bleach only.
caution-viruses-pass = Viruses pass: boil or chlorinate as well.
caution-weak-immunity-boil = Babies or weak immunity: boil.
caution-two-days = Unsure of the sun? Leave it both days.

extra-lower-figure = Took the lower label figure.
extra-old-bottle = Old bottle: get fresh.
extra-see-health-worker = The sick need a health worker and ORS now.

covers = Kills: bacteria { $bacteria }, viruses { $viruses }, Giardia { $giardia }, Cryptosporidium { $cryptosporidium }.
boil-kills-all = Boiling kills them all.
cover-yes = yes
cover-partly = partly
cover-no = no
defer = Your health office's rules come first.

## Changed doses

adjusted-faster = Warm clear water, in a hurry: { $measure } in all, wait { $wait }. More taste, not more safety.
adjusted-weaker = Clear water only: { $measure }, but wait { $wait }.
cannot-faster = It cannot be made shorter safely. Faster: a rolling boil, then cool.
cannot-weaker = Less would not be safe here. For the taste: let it stand open, or pour between clean cans, after the wait.

## Questions

ask-product = Which product do you have: bleach, chlorine tablets, chlorine powder or iodine?
ask-product-bleach-tablet = What do those tablets contain? Send what the label says, with the mg. They must be made for drinking water.
ask-product-chlorine-form = Is the chlorine a liquid, a powder or tablets? Send it with the % or mg on the label.
ask-product-iodine-form = Which iodine is it: tincture, povidone-iodine or tablets?
ask-product-pool = Pool chlorine may be stabilised: not for drinking water. Do you have plain bleach, drinking-water tablets or iodine? If not, boil.
ask-product-powder-form = Which powder: calcium hypochlorite or bleaching powder? Send the % on its label.
ask-product-spoiled = Scented, thick or coloured bleach is not for drinking water. Do you have plain bleach, tablets or iodine? If not, boil.
ask-product-tablet-form = Are the tablets chlorine or iodine? Send the name and mg on the strip.
ask-product-two-products = That is more than one product. Which one will you use?

ask-strength = What % is on the { $product } label?
ask-strength-no-label = Without the % I give no dose. Can you find another labelled bottle? If not, boil: a rolling boil, then cool. If you have no fire either, say: no label no fire.
ask-strength-degrees = What % is on the { $product } label? Degrees can mean two things.
ask-strength-denied = So what % is it? Read me the { $product } label.
ask-strength-bound = What exact % is on the { $product } label? "Less than" is not enough for a dose.
ask-strength-guessed = Please check the { $product } label: what % is printed on it?
ask-strength-outside = { $product } does not come in that strength. What % is printed on the label?
ask-strength-is-target = That is for the water. What % is printed on the { $product } label?
ask-strength-thinned = Thinned { $product } has no known strength. What % is on the label of an unopened or unmixed bottle? If there is none, boil.
ask-strength-two = Two different % figures. Which one is printed on the { $product } label?
ask-strength-unreadable = I cannot read the %. Please send it again, like: 3.5%
ask-strength-wide = That range is too wide. What exact % is on the { $product } label?

ask-tablet = How many mg is one tablet? It is on the strip or box.
ask-tablet-compound = Is that the mg of iodine? Tablets often print the compound. How many mg of iodine does one tablet release?
ask-tablet-two = Two tablet sizes. Which mg will you use?
ask-tablet-outside = That is no drinking-water tablet I know. How many mg is printed on the strip?

ask-volume = How many litres of water do you want to treat?
ask-volume-uncounted = How many litres is that in all?
ask-volume-unsized = How many litres does it hold? (bucket and can sizes differ)
ask-volume-outside = I cannot use that amount. How many litres of water do you want to treat?
ask-volume-two = More than one amount of water. How many litres do you want to treat in one go?
ask-volume-unreadable = I cannot be sure of the amount. How many litres of water? Please write it without dots, like: 1000 L

last-resort = LAST RESORT, strength unknown: { $drops } in each litre, wait { $wait }. It must smell faintly of chlorine; if not, repeat once, wait again; if still not, do not drink.
last-resort-total = LAST RESORT, strength unknown: { $total } in all ({ $drops } a litre), wait { $wait }. It must smell of chlorine; if not repeat once, wait; if still not, do not drink.

## No dose

refused-chemical = No dose: chlorine, iodine, boiling and filters do not take out fuel, pesticide, waste or salt. Do not drink it. Find other water, tell the health office.
refused-iodine_unsuitable = No iodine in pregnancy, thyroid disease, for babies or beyond a few weeks. Boil instead, or use plain bleach: send its % and the litres.
refused-mixed = DANGER: never mix bleach with acid, vinegar, ammonia or cleaners: poison gas. Open up, go into fresh air. Use plain bleach and water only.
refused-other_use = I answer for drinking water only. For wounds, eyes, dialysis, fish, pools or laundry ask a health worker.
refused-over_limit = More than twice the dose is not safe to drink.

## Somebody hurt or ill

first-aid = GET MEDICAL HELP NOW. Swallowed: rinse mouth, sips of water if awake, do NOT make vomit. Eye or skin: rinse { $rinse } with water. Gas: fresh air.
first-aid-powder = GET MEDICAL HELP NOW. Swallowed: rinse mouth, sips of water if awake, do NOT make vomit. Skin: brush off. Eye, skin: rinse { $rinse }. Gas: fresh air.
unsure = Swallowed or splashed? Then rinse, do NOT make vomit, get medical help. If you only want the dose, send just product, % and litres.
illness = Give ORS or safe water in small sips, go on breastfeeding. To a clinic NOW if blood, sunken eyes, no urine, very weak or cannot drink. I cannot diagnose.

## Service

kept = Remembered: { $product }{ $label }. Now just send the litres.
kept-part = Remembered: { $product }. What is the % or mg on its label? Send: my { $product } is ...
kept-figure = Remembered:{ $label }. Which product is it?
not-kept = I did not store that: I am not sure of the product and its strength. Send it like: remember bleach 5%
not-served = I understood you, but I cannot work that out yet. Please ask your supervisor or the health office. I can answer doses, boiling, sun and filters.
set-language = Language set: { $language }.
set-language-unknown = I do not speak { $language } yet. I go on in English.
set-units-metric = Units set: litres and mL.
set-units-us = Units set: US gallons.
set-units-imperial = Units set: imperial gallons.
help = Send: product, % on the label, litres, clear or cloudy. Like: 20 L cloudy, bleach 5%. Or: boil, sun, filter, remember my bleach 5%, MORE, WHY, STOP, FORGET.
greeting = matone tells how to make water safe. Send product, % and litres, like: 20 L cloudy, bleach 5%. Or HELP.
stopped = Stopped: no unasked messages. Your questions are still answered. START to begin again.
started = Messages are on. Send product, % and litres, like: 20 L cloudy, bleach 5%. Or HELP.
forgotten = All that was kept of you is deleted.
not-understood = I did not understand. Send product, % and litres, like: 20 L cloudy, bleach 5%. Or HELP.
nothing-before = There is no answer to speak of yet. Send product, % and litres, like: 20 L cloudy, bleach 5%.
nothing-more = That was all. WHY gives the sources.
why = { $dose }{ $wait } Sources: { $sources }.
why-dose = Brings { $mg } mg/L.
why-wait-rule = { " " }Wait: published rule.
why-wait-unknown = { " " }Wait: published rule, temperature not known.
why-wait-cold = { " " }Wait: longer for cold water.
why-wait-ct = { " " }Wait: contact time { $reached } of { $needed } mg.min/L needed, counting on { $residual } mg/L.
why-boil = Some agencies ask for the longer boil only higher up, and the world body only for the rolling boil: I keep the stricter rule.
source-published = { $title } ({ $publisher }, { $year })
source-undated = { $title } ({ $publisher })
source-memory = { $title } ({ $publisher }; from memory)
source-common = common practice without a source

## Terminal and command line

terminal-greeting = matone: how to make the water at hand safe to drink. Follow your health office first.
terminal-examples = Try:  2 gallons cloudy 1% bleach  |  how long to boil at 2400 m  |  remember my bleach is 5%
terminal-bye = Stay well.
