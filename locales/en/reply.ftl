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

product-any = chlorine

clarity-clear = { " " }clear
clarity-cloudy = { " " }cloudy
# Said where the answer has no room for cloudy water and takes the water for clear.
clarity-assumed = { " " }if clear
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
# Said behind, where the first message had no room for spoons.
measure-later = That is { $measure }.
tablets = { $count-n ->
    [one] { $count } tablet
   *[other] { $count } tablets
}
grams = { $grams } g
kilograms = { $kilograms } kg
metres = { $metres } m
minutes = { $value } min
hours = { $value } h
days = { $value } days
days-n = { $days-n ->
    [one] { $value } day
   *[other] { $value } days
}

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

if-cloudy-or-cold = Cloudy: { $measure }, { $wait }; cold: same, { $coldwait }.
head-new-tank = { $echo }. New or dirty tank first: scrub it, fill it, add { $measure }, leave { $wait }, empty it. Then dose.
if-new-tank = New or dirty tank: scrub it, fill it, add { $measure }, leave { $wait }, empty it; then dose.
if-cloudy-or-cold-same = Cloudy or cold: { $measure }, { $wait }.
if-cloudy = Cloudy: strain, { $measure }, { $wait }.
if-cold = Cold: { $measure }, { $wait }.
if-cold-wait = Cold: wait { $wait }.

more-hint = MORE
# Words that people may send next; each is one that the lexicon reads.
next-why = WHY
next-remind = REMIND ME
next-help = HELP

## Wells

head-well = Well { $across } wide, { $depth } water ({ $volume }): mix { $measure } { $product } in buckets, pour in, stir, leave { $wait }. DO NOT DRINK until pumped out to { $ready } mg/L.
head-well-cloudy = Muddy well: bail it out and let it clear first. Then { $across } wide, { $depth } water ({ $volume }): mix { $measure } { $product } in buckets, pour in, stir, leave { $wait }. DO NOT DRINK until pumped out to { $ready } mg/L.
well-wall = First brush the wall with { $ml } of it in { $litres } of water.
well-wall-stock = First brush the wall with { $ml } of { $percent }% stock solution in { $litres } of water.
well-hurry = A well needs { $wait }. Only in an emergency { $emergency }, then pump out and test. Nobody drinks before.
well-emergency = Only in an emergency: { $wait } instead.

## Solutions for hands, cleaning and stock

head-dilute-liquid = { $volume } of { $target }%: { $measure } of { $product } + { $water } of water (one part + { $parts } parts water).
head-dilute-as-is = { $volume } of { $target }%: use { $product } as it is, do not add water.
head-dilute-tablets = { $volume } of { $target }%: { $count } { $product } ({ $per } in each litre), fill up with water to { $volume }.
head-dilute-made-up = { $volume } of { $target }%: { $measure } of { $product } ({ $per } in each litre), fill up with water to { $volume }.
dilute-hands = For hands: not for eyes, not to drink.
dilute-surfaces = Keep surfaces wet { $wait }, then rinse. Not to drink.
dilute-stock = Make it fresh each day. Not to drink as it is.
dilute-any-volume = For any amount: one part of it + { $parts } parts of water.

## Chlorine tests

residual-enough = { $reading } mg/L is enough (least { $least }). Keep it covered and drink it within { $keeps }.
residual-enough-at-use = { $reading } mg/L. { $retest } after the dose: too little (least { $aim }), do not drink. In the can people drink from, up to { $keeps }: enough (least { $atuse }). Which is it?
residual-low = { $reading } mg/L is too little, least { $aim }. Do not drink it yet: add chlorine, wait { $retest }, test again. For the amount send litres, product and %.
residual-add = { $reading } mg/L is too little. To { $volume } add { $measure } of { $product }, stir, wait { $wait }, test again: at least { $aim } mg/L before anybody drinks.
residual-add-zero = { $reading } mg/L. Never dosed? Ask for the full dose. Dosed: to { $volume } add { $measure } of { $product }, stir, wait { $wait }, test again: { $aim } mg/L before drinking.
residual-add-stock = { $reading } mg/L is too little. { $grams } of { $product } made up to { $litre } = { $percent }% stock: to { $volume } add { $measure } of it, wait { $wait }, test again: { $aim } mg/L.
residual-add-zero-stock = { $reading } mg/L. Never dosed? Ask for the full dose. Dosed: { $grams } of { $product } made up to { $litre } = { $percent }%; to { $volume } add { $measure } of it, wait { $wait }, test again.
residual-too-early = { $reading } mg/L, but too early to tell. Test again { $retest } after the dose: at least { $aim } mg/L.
residual-high = { $reading } mg/L is more than for every day (most { $most }). Let it stand open or pour it between clean cans, test again.
residual-too-high = { $reading } mg/L is too much: do not drink it yet. Let it stand open or pour it between clean cans until { $most } mg/L or less.
residual-stale = { $reading } mg/L, and treated more than { $keeps } ago: treat it again before drinking.
residual-no-kit = Without a kit: { $retest } after the dose it must smell faintly of chlorine. No smell: the same dose once more, wait { $retest }. Still none: do not drink it.
residual-already-dosed = Already dosed: add no more now. { $retest } after the dose it must smell faintly of chlorine. Strong smell, or too much put in: do not drink it, take new water.
residual-still-no-smell = Still no smell: do not drink it and add no more. Boil it, or find clearer water and dose it anew.
residual-no-smell = No smell: add the same dose once more, wait { $retest }, smell again. Still no smell of chlorine: do not drink it. Boil it or find clearer water.
residual-smells = A faint smell of chlorine after the wait is good: drink it. If it is strong, let it stand open or pour it between clean cans.
residual-well-not-ready = { $reading } mg/L: the well is not ready. DO NOT DRINK. Go on pumping out until { $ready } mg/L or less, then treat its water before drinking until it tests clean.
residual-well-ready = { $reading } mg/L: the well is pumped out enough ({ $ready } or less). Go on treating its water before drinking until it tests clean.
residual-zero = Zero again? The water eats chlorine: clear it, or test doses in buckets (jar test).

## Jar test

jar-found = Jar test: { $dose } in { $jar } leaves { $aim } mg/L. That is { $each } of the same solution for each { $thousand }. Send the tank's litres for its dose.
jar-found-tank = Jar test: { $dose } in { $jar } leaves { $aim } mg/L. For { $tank }: { $measure } of the same solution, stir, wait { $wait }, test again.
jar-all-above = All jars are over { $aim } mg/L: repeat the test with less in each { $jar }.
jar-all-below = No jar reached { $aim } mg/L: repeat the test with more in each { $jar }.
jar-how-to = Jar test: { $doses } mL of { $percent }% solution into four buckets of { $jar }, stir, wait { $wait }, test each. Send the mL and what each shows. Aim { $aim } mg/L.
jar-uneven = More solution must leave more chlorine; these readings go up and down. Please repeat the jar test.

## Stock and people

people = { $people-n ->
    [one] { $people } person
   *[other] { $people } people
}
supply-clear-water = clear water
supply-cloudy-water = cloudy water
stock-counted = { $count } { $product }
stock-measured = { $amount } of { $product }
supply-treats = { $stock } treats about { $litres } of { $water }.
supply-lasts = { $stock }: about { $days } for { $people } at { $each } each a day ({ $drinkingdays } if for drinking only, { $drinking }).
supply-serves = { $stock }: about { $people } for { $days } at { $each } each a day ({ $drinkingpeople } if for drinking only, { $drinking }).
supply-needs = { $people }, { $days }, { $each } each a day = { $litres } of { $water }: { $need }. Order { $measure } ({ $margin }% to spare).
supply-counted-cloudy = Counted for cloudy water.
supply-ages = But it keeps { $months } months only.
supply-if-cloudy = Cloudy water takes twice as much.

## Keeping

storage-water = Keep treated water covered, in a clean can with a narrow neck. Pour it, or use a tap or ladle: no hands. Drink it within { $keeps }, then treat it again.
storage-hands = If hands or a dirty cup went in, treat it again.
storage-rinse = Rinse the can before filling: { $ml } of bleach in { $litre } of water, { $seconds } seconds.
storage-product = Keep { $product } closed, cool and dark, out of reach of children, away from acids and other cleaners. Replace it after { $months } months.
storage-product-by-pack = Keep { $product } closed, cool, dry and dark, out of reach of children. Not after the date on the pack.

## Boiling, sun, filters

head-boil = Bring to a rolling boil, keep it boiling { $wait }, let it cool covered.
head-boil-cloudy = Settle and strain, bring to a rolling boil, keep it boiling { $wait }, let it cool covered.
if-high = Above { $altitude } m or in the mountains: { $wait }.
boiling-point = At { $altitude } m water boils at { $celsius } C: hot enough to kill all germs of drinking water.
head-sun = Clear bottles up to { $size } in the sun: { $wait }.
head-sun-unsure = Clear bottles up to { $size }: { $sunny } if bright all day, otherwise { $wait }. Not in rain.
head-sun-rain = Sun does not make water safe in rain. Boil, or use chlorine. Or collect clean rainwater and treat it.
fill-and-shake = Fill three quarters, shake, top up, lay flat.
head-filter = A { $pore } um filter{ $stops }{ $passes }.
head-filter-unknown = A filter of unknown pore size{ $stops }{ $passes }. Look for the um figure on it.
filter-stops = { " " }stops { $list }
filter-passes-after-stops = ; not { $list }
filter-passes-only = { " " }does not stop { $list }
reason-kills-all = Boiling kills all germs, in muddy and cold water too.
reason-nothing-else = Nothing you named makes it safe; fire does.
reason-only-one = It is the one thing you named that works here.
reason-two-barriers = Two steps are safer than one.
reason-widest-cover = It stops the most of what you have.
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
list-two-or = { $one } or { $two }
list-more = { $one }, { $rest }

## Cautions: one short sentence each

caution-absolute-pore = The figure must be absolute (or cyst-rated), not nominal.
caution-bottle-size = Use clear PET bottles, not glass jugs or big cans.
caution-clean-tank-first = Clean tank first; never one that held fuel or sewage.
caution-cool-and-dark = Keep it cool and dark.
caution-danger-signs = Blood, sunken eyes, no urine, very weak: to a clinic now.
caution-fresh-daily = Make it fresh every day.
caution-gloves-and-air = Gloves on, doors open, mind the eyes.
caution-keep-from-children = Out of reach of children.
caution-keep-treating = Go on treating the well's water until it tests clean.
caution-let-stand = Too strong? Let it stand open or pour it between clean cans.
caution-narrow-neck = Covered can, narrow neck, no hands.
caution-never-mix = Never mix with acid or ammonia: gas.
caution-not-for-drinking = Not to drink.
caution-not-until-pumped = Do not drink until it is pumped out and tested.
caution-rehydrate = ORS in small sips.
caution-retest-later = Test again after the wait.
caution-stir-tank = Dose while it fills or stir well; taps shut during the wait.
caution-tablet-too-strong = One tablet is too strong for so little: treat more water with it.
caution-well-clear-first = Muddy well: bail it out and let it clear first.
caution-well-ph = At this pH shock chlorination works badly: ask the water office.
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

adjusted-faster = { $echo }. Only if clear and not cold: { $measure } in all, wait { $wait }. More taste, not more safety.
adjusted-weaker = { $echo }. Next time, only if clear and not cold: { $measure }, wait { $wait }. This water: let it stand open.
cannot-faster = It cannot be made shorter safely. Faster: a rolling boil, then cool.
of-solution = NEVER drink it: for cleaning only. Make it fresh every day, keep it closed, labelled, away from children. For drinking water send the litres and the bottle's %.
too-strong = Too much chlorine? Let it stand open for some hours or pour it between clean cans. Never shorten the wait. If it was drunk and somebody feels ill: get help.
cannot-weaker = Less would not be safe here. For the taste: let it stand open, or pour between clean cans, after the wait.

## Questions

ask-product = Which product do you have: bleach, chlorine tablets, chlorine powder or iodine?
ask-product-chlorine = Which chlorine do you have: bleach, calcium hypochlorite or bleaching powder?
ask-product-unfit-for-well = That is not for wells. Do you have bleach, calcium hypochlorite or bleaching powder?
ask-product-unfit-for-cleaning = That is not for this. Do you have bleach, chlorine powder or chlorine tablets?
ask-product-unfit-for-residual = That does not raise chlorine. Do you have bleach, chlorine powder or chlorine tablets?
ask-product-unfit-for-supply = How far that goes is on its label. Which other product do you have: bleach, chlorine powder, chlorine tablets or iodine?
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
ask-strength-is-solution = That is a strength for cleaning. What % is printed on the { $product } label?
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

ask-volume-solution = How many litres of the solution do you want to make?
ask-volume-tank = How many litres of water are in it?
ask-jar = How many litres of water were in each jar or bucket?

ask-diameter = How wide is the well, in metres?
ask-diameter-outside = I cannot use that width. How many metres is the well across?
ask-depth = How deep is the water in the well, in metres? Let down a stone on a rope and measure the wet part.
ask-well-depth-only = That is the well. How deep is the WATER in it, in metres? Let down a stone on a rope and measure the wet part.
ask-water-depth-outside = I cannot use that depth. How many metres of water stand in the well?
ask-target = How strong must it be? Hands { $hands }%, floors { $floors }%, blood { $blood }%, cholera vomit or stools { $stools }%. Your health office may say otherwise.
ask-target-outside = I cannot use that strength. How many % must the solution be? Hands { $hands }%, floors { $floors }%, blood { $blood }%.
ask-target-too-strong = Your { $product } is weaker than that. How many % must the solution be? Hands { $hands }%, floors { $floors }%, blood { $blood }%.
ask-residual = What does the test show, in mg/L (or ppm)?
ask-people = How many people is it for?
ask-people-outside = I cannot use that number. How many people is it for?
ask-days = For how many days? (Or tell me how much you have.)
ask-days-outside = I cannot use that. For how many days?
ask-stock-liquid = How much { $product } do you have, in litres? Or: for how many people and days?
ask-stock-powder = How many kg or g of { $product } do you have? Or: for how many people and days?
ask-stock-tablets = How many tablets do you have? Or: for how many people and days?
ask-stock-outside = I cannot use that amount. How much { $product } do you have?

last-resort = LAST RESORT, strength unknown: { $drops } in each litre, wait { $wait }. It must smell faintly of chlorine; if not, repeat once, wait again; if still not, do not drink.
last-resort-total = LAST RESORT, strength unknown: { $total } in all ({ $drops } a litre), wait { $wait }. It must smell of chlorine; if not repeat once, wait; if still not, do not drink.

## No dose

refused-chemical = No dose: chlorine, iodine, boiling and filters do not take out fuel, pesticide, waste or salt. Do not drink it. Find other water, tell the health office.
refused-iodine_unsuitable = No iodine in pregnancy, thyroid disease, for babies or beyond a few weeks. Boil instead, or use plain bleach: send its % and the litres.
refused-mixed = DANGER: never mix bleach with acid, vinegar, ammonia or cleaners: poison gas. Open up, go into fresh air. Use plain bleach and water only.
refused-other_use = I answer for drinking water and cleaning only. For wounds, eyes, dialysis, fish, pools, laundry or food ask a health worker.
refused-over_limit = More than twice the dose is not safe to drink.

## Somebody hurt or ill

first-aid = GET MEDICAL HELP NOW. Swallowed: rinse mouth, sips of water if awake, do NOT make vomit. Eye or skin: rinse { $rinse } with water. Gas: fresh air.
first-aid-powder = GET MEDICAL HELP NOW. Swallowed: rinse mouth, sips of water if awake, do NOT make vomit. Skin: brush off. Eye, skin: rinse { $rinse }. Gas: fresh air.
# Before first aid, where the deployment names a number to call.
help-line = Call { $number }.
first-aid-then = Then ask again.
unsure = Swallowed or splashed? Then rinse, do NOT make vomit, get medical help. If you only want the dose, send just product, % and litres.
illness = Give ORS in small sips, go on breastfeeding. To a clinic NOW if blood, sunken eyes, no urine, very weak or cannot drink. I cannot diagnose.
illness-danger = TO A CLINIC NOW. Nothing by mouth if unconscious or cannot swallow. Awake: ORS in small sips on the way, go on breastfeeding. I cannot diagnose.
illness-feeding = Mix ORS as its packet says, in safe water. Go on giving food.
illness-water = Treat all drinking water now, wash hands with soap, tell the health office if more than one is ill.

## Service

kept = Remembered: { $product }{ $label }. Now just send the litres.
kept-part = Remembered: { $product }. What is the % or mg on its label? Send: my { $product } is ...
kept-figure = Remembered:{ $label }. Which product is it?
not-kept = I did not store that: I am not sure of the product and its strength. Send it like: remember bleach 5%
kept-opened = Opened { $date }.
kept-future = { $date } is still to come. When was it opened? Send like: opened 1 March 2026.
bottle = { $bottle }.
bottles = I remember: { $list }
bottles-none = I remember no bottle of yours. Send like: remember bleach 5%, 1 L
left = Left: { $amount }, treats { $litres }.
left-amount = Left: { $amount }.
left-days = At your pace { $days }: get more now.
left-short = By my count only { $amount } is left in your bottle.
left-empty = By my count it is empty now: get more.
age-soon = Use it soon: it keeps { $months } months.
age-now = It is over { $months } months old: get fresh.
age-estimate = Estimate: about { $percent }% of its strength is left if kept at { $celsius } C. The dose does not count on that: check the smell.
undone = Not counted. { $left }
nothing-to-undo = I counted no dose of yours today.
will-remind = I will write in { $wait }.
nothing-to-wait-for = There is no wait to remind you of. Ask for a dose first.
reminder-chlorine = { $wait } are over. Was the water cloudy or cold? Then wait longer. Smell it: faint chlorine, it is ready. No smell: the same dose once more and wait again.
reminder-disinfectant = { $wait } are over: ready to drink. If the water was cloudy or cold, wait longer.
reminder-retest = { $wait } are over: test the chlorine again before anybody drinks.
reminder-sun = { $wait } are over. If it was bright, ready to drink; if not, leave it longer.
reminder-surface = { $wait } are over: rinse the surface.
reminder-well = { $wait } are over: pump the well out, then test. Nobody drinks before.
seen = Your other question ({ $topic }): send it alone.
topic-boil = boiling
topic-dose = the dose
topic-dilute = cleaning
topic-storage = storing
topic-well = the well
topic-why = why
set-language = Language set: { $language }.
set-language-unknown = I do not speak { $language } yet. I go on in English.
set-units-metric = Units set: litres and mL.
set-units-us = Units set: US gallons.
set-units-imperial = Units set: imperial gallons.
help = Send product, % on the label, litres. Like: 20 L cloudy, bleach 5%. Ask also: boil, well, cleaning, chlorine test, stock, storing, MORE, WHY, STOP, FORGET.
greeting = matone tells how to make water safe. Send product, % and litres, like: 20 L cloudy, bleach 5%. Or HELP.
stopped = Stopped: no unasked messages. Your questions are still answered. START to begin again.
started = Messages are on. Send product, % and litres, like: 20 L cloudy, bleach 5%. Or HELP.
dropped = I no longer remember your { $product }.
forgotten = All that was kept of you is deleted.
not-understood = I did not understand. Send product, % and litres, like: 20 L cloudy, bleach 5%. Or HELP.
nothing-before = First ask for a dose. Send product, % and litres, like: 20 L cloudy, bleach 5%.
nothing-more = That was all. WHY gives the sources.
why = { $dose }{ $wait }{ $logs } Sources: { $sources }.
why-dose = Brings { $mg } mg/L.
why-wait-rule = { " " }Wait: published rule.
why-wait-unknown = { " " }Wait: published rule, temperature not known.
why-wait-cold = { " " }Wait: longer for cold water.
why-wait-ct = { " " }Wait: contact time { $reached } of { $needed } mg.min/L needed, counting on { $residual } mg/L.
why-logs = { " " }At { $celsius } C and pH { $ph }, counting on { $residual } mg/L: contact time { $reached } of { $needed } mg.min/L; viruses { $viruses } log, Giardia { $giardia } log, Cryptosporidium none.
why-boil = Some agencies ask for the longer boil only higher up, and the world body only for the rolling boil: I keep the stricter rule.
source-published = { $title } ({ $publisher }, { $year })
source-undated = { $title } ({ $publisher })
source-memory = { $title } ({ $publisher }; from memory)
source-common = common practice without a source

## The printed chart: read from a wall, so no message of it has to fit an SMS

chart-title = How much bleach makes water safe
chart-caption = Add this much plain liquid bleach. The % must be the one on your bottle.
chart-water = Water
chart-bottle = Bleach { $percent }%
chart-clear = Clear
chart-cloudy-or-cold = Cloudy or cold
chart-imperial-quarts = { $value } imp qt
chart-teaspoons = { $spoons } tsp
chart-tablespoons = { $spoons } tbsp
chart-or = or { $way }
chart-then-wait = Then wait
chart-wait-if-cold = cold: { $wait }
chart-legend = Measure one way only: drops, mL or spoons. tsp: level teaspoon. tbsp: level tablespoon. Cold: cold to the hand.

chart-step-add = Find your water in the table. Add that much bleach and stir.
chart-step-wait = Wait as long as the last row says. Nobody drinks before.
chart-survive = Bleach does not kill { $list }.
chart-may-survive = { $list } may survive.

chart-caution-chemicals-stay = Bleach does not take out fuel, pesticides, waste or salt: find other water.
chart-caution-keep-from-children = Keep bleach away from children.
chart-caution-label-first = If the bottle gives directions for drinking water, follow those.
chart-caution-never-mix = Never mix with acid or ammonia: gas.
chart-caution-old-bottle = Use a bottle that is less than a year old.
chart-caution-smell-check = Smell it. It must smell faintly of chlorine. If not, add the same amount once more and wait again. If it still does not, do not drink it.
chart-caution-strain-first = Cloudy water: let it settle, then strain it through a clean cloth.
chart-caution-too-murky = Water too murky to read print through: do not use bleach, boil it.
chart-caution-unscented-only = Plain bleach only: no scent, no colour, not thick, no other cleaner in it.
chart-caution-weak-immunity-boil = For babies and people with weak immunity: boil the water instead.

chart-sources = Sources: { $sources }.
chart-printed = Printed { $year }-{ $month }-{ $day }.

## Terminal and command line

terminal-greeting = matone: how to make the water at hand safe to drink. Follow your health office first.
terminal-examples = Try:  2 gallons cloudy 1% bleach  |  how long to boil at 2400 m  |  remember my bleach is 5%
terminal-bye = Stay well.
