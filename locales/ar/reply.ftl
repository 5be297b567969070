# What matone says in Arabic.
#
# The program hands over every figure, already written out; no message may hold a figure of its
# own. Counts ending in -n only choose the plural form. No vowel signs, no tatweel, no invisible
# marks: one segment holds 70 characters.
# A dose answer is a head and then cautions, as many as one SMS holds; the others wait for المزيد.

## Names

product-bleach = مبيض
product-bleaching_powder = مسحوق تبييض
product-calcium_hypochlorite = هيبوكلوريت كالسيوم
product-chlorine_dioxide = ثاني أكسيد الكلور
product-iodine_tablet = حبوب يود
product-iodine_tincture = صبغة يود
product-nadcc = حبوب كلور
product-povidone_iodine = بوفيدون يود

method-fire = الغلي
method-filter = الفلتر
method-sunlight = الشمس في قوارير شفافة

product-any = كلور

clarity-clear = { " " }صافي
clarity-cloudy = { " " }عكر
# Said where the answer has no room for cloudy water and takes the water for clear.
clarity-assumed = { " " }صافي
warmth-cold = { " " }بارد
warmth-celsius = { " " }{ $celsius }°م

## Measures

volume-litres = { $value } ل
volume-us-gallons = { $value } غالون US
volume-us-quarts = { $value } كوارت أمريكي
volume-imperial-gallons = { $value } غالون UK
label-percent = { " " }{ $value }%
label-mg = { " " }{ $value } ملغ

drops = { $drops-n ->
    [zero] { $drops } قطرة
    [one] { $drops } قطرة
    [two] { $drops } قطرة
    [few] { $drops } قطرات
    [many] { $drops } قطرة
   *[other] { $drops } قطرة
}
measure-drops = { $drops } ({ $ml } مل)
measure-ml = { $ml } مل
measure-ml-teaspoon = { $ml } مل ({ $spoons } م شاي)
measure-ml-tablespoon = { $ml } مل ({ $spoons } م أكل)
measure-later = أي { $measure }.
tablets = { $count-n ->
    [zero] { $count } حبة
    [one] { $count } حبة
    [two] { $count } حبة
    [few] { $count } حبات
    [many] { $count } حبة
   *[other] { $count } حبة
}
grams = { $grams } غ
kilograms = { $kilograms } كغ
metres = { $metres } م
minutes = { $value } د
hours = { $value } ساعة
days = { $value } يوم
days-n = { $days-n ->
    [zero] { $value } يوم
    [one] { $value } يوم
    [two] { $value } يوم
    [few] { $value } أيام
    [many] { $value } يوما
   *[other] { $value } يوم
}

## A dose

echo = { $volume }{ $clarity }{ $warmth }، { $product }{ $label }
echo-remembered = { $volume }{ $clarity }{ $warmth }، عبوتك { $product }{ $label }
head-liquid = { $echo }: أضف { $measure }، حرك، انتظر { $wait }.
head-liquid-cloudy = { $echo }: رسب ورشح، { $measure }، حرك، دعه { $wait }.
head-tablets = { $echo }: أضف { $measure }، حرك، انتظر { $wait }.
head-tablets-cloudy = { $echo }: رسب ورشح، { $measure }، حرك، دعه { $wait }.
head-powder = { $echo }: أذب { $measure } في دلو ماء، صبه فيه، حرك، انتظر { $wait }.
head-powder-cloudy = { $echo }: رسب ورشح، أذب { $measure } في دلو ماء، صبه فيه، حرك، انتظر { $wait }.
head-stock = { $echo }: { $grams } وأكمل بالماء حتى { $litres } = محلول أم { $percent }%. أضف منه { $measure }، حرك، انتظر { $wait }.
head-stock-cloudy = { $echo }: رسب ورشح. { $grams } وأكمل بالماء حتى { $litres } = محلول أم { $percent }%. أضف منه { $measure }، حرك، انتظر { $wait }.
head-label = { $echo }: أضف ما يقوله ملصقه لهذا الماء، حرك، انتظر { $wait }.
head-label-cloudy = { $echo }: رسب ورشح، أضف ما بالملصق، حرك، دعه { $wait }.

if-cloudy-or-cold = عكر: { $measure }، { $wait }؛ بارد: نفس هذه الكمية، { $coldwait }.
head-new-tank = { $echo }. خزان جديد أو وسخ، أولا: افركه، املأه، أضف { $measure }، اتركه { $wait }، أفرغه. ثم أضف جرعة الماء.
if-new-tank = خزان جديد أو وسخ: افركه، املأه، أضف { $measure }، اتركه { $wait }، أفرغه؛ ثم أضف جرعة الماء.
if-cloudy-or-cold-same = عكر أو بارد: { $measure }، { $wait }.
if-cloudy = عكر: رشحه، { $measure }، { $wait }.
if-cold = بارد: { $measure }، { $wait }.
if-cold-wait = بارد: انتظر { $wait }.

more-hint = المزيد
# Words that people may send next; each is one that the lexicon reads.
next-why = لماذا
next-remind = ذكرني
next-help = مساعدة

## Wells

head-well = بئر عرضها { $across } وعمق مائها { $depth } ({ $volume }): اخلط { $measure } { $product } في دلاء ماء، صبها في البئر، حرك، اترك { $wait }. لا تشربوا حتى تضخوا ماءها وينزل الكلور إلى { $ready } ملغ/ل.
head-well-cloudy = بئر عكرة: انزحها أولا حتى تصفو. ثم عرض { $across } وماء { $depth } ({ $volume }): اخلط { $measure } { $product } في دلاء ماء، صبها، حرك، اترك { $wait }. لا تشربوا حتى تضخوا ماءها وينزل الكلور إلى { $ready } ملغ/ل.
well-wall = أولا افرك الجدار بالفرشاة بمزيج { $ml } منه في { $litres } ماء.
well-wall-stock = أولا افرك الجدار بالفرشاة بمزيج { $ml } من محلول أم { $percent }% في { $litres } ماء.
well-hurry = البئر تحتاج { $wait }. في الطوارئ فقط { $emergency }، ثم ضخ ماءها وقس الكلور. لا يشرب أحد قبل ذلك.
well-emergency = في الطوارئ فقط: { $wait } بدلا من ذلك.

## Solutions for hands, cleaning and stock

head-dilute-liquid = { $volume } بتركيز { $target }%: { $measure } { $product } + { $water } ماء (جزء واحد منه + { $parts } جزء ماء).
head-dilute-as-is = { $volume } بتركيز { $target }%: استعمل { $product } كما هو، لا تضف ماء.
head-dilute-tablets = { $volume } بتركيز { $target }%: { $product } عدد { $count } ({ $per } لكل لتر)، أكمل بالماء حتى { $volume }.
head-dilute-made-up = { $volume } بتركيز { $target }%: { $measure } { $product } ({ $per } لكل لتر)، أكمل بالماء حتى { $volume }.
dilute-hands = لليدين: ليس للعيون ولا للشرب.
dilute-surfaces = أبق السطح مبللا { $wait } ثم اشطفه. ليس للشرب.
dilute-stock = حضره جديدا كل يوم. لا تشربه هكذا.
dilute-any-volume = لأي كمية: جزء واحد منه + { $parts } جزء ماء.

## Chlorine tests

residual-enough = { $reading } ملغ/ل كاف (الأدنى { $least }). أبقه مغطى واشربه خلال { $keeps }.
residual-enough-at-use = { $reading } ملغ/ل. بعد { $retest } من الجرعة: لا يكفي (الأدنى { $aim })، لا تشرب. في وعاء الشرب وحتى { $keeps }: كاف (الأدنى { $atuse }). أيهما؟
residual-low = { $reading } ملغ/ل لا يكفي، الأدنى { $aim }. لا تشربه الآن: أضف كلور، انتظر { $retest }، قس من جديد. لمعرفة الكمية أرسل اللترات والمنتج ونسبة %.
residual-add = { $reading } ملغ/ل لا يكفي. أضف إلى { $volume }: { $measure } { $product }، حرك، انتظر { $wait }، قس من جديد: { $aim } ملغ/ل على الأقل قبل أن يشرب أحد.
residual-add-zero = { $reading } ملغ/ل. لم تعالجه؟ اطلب الجرعة الكاملة. عالجته؟ أضف إلى { $volume }: { $measure } { $product }، حرك، انتظر { $wait }، قس من جديد: { $aim } ملغ/ل قبل الشرب.
residual-add-stock = { $reading } ملغ/ل لا يكفي. { $grams } { $product } وأكمل بالماء حتى { $litre } = محلول أم { $percent }%: أضف منه إلى { $volume }: { $measure }، انتظر { $wait }، قس من جديد: { $aim } ملغ/ل.
residual-add-zero-stock = { $reading } ملغ/ل. لم تعالجه؟ اطلب الجرعة الكاملة. عالجته؟ { $grams } { $product } وأكمل بالماء حتى { $litre } = { $percent }%؛ أضف منه إلى { $volume }: { $measure }، انتظر { $wait }، قس من جديد.
residual-too-early = { $reading } ملغ/ل، لكن الوقت مبكر للحكم. قس من جديد بعد { $retest } من الجرعة: { $aim } ملغ/ل على الأقل.
residual-high = { $reading } ملغ/ل أكثر من المناسب لكل يوم (الأقصى { $most }). اتركه مكشوفا أو اسكبه بين أوعية نظيفة، وقس من جديد.
residual-too-high = { $reading } ملغ/ل كثير جدا: لا تشربه الآن. اتركه مكشوفا أو اسكبه بين أوعية نظيفة حتى { $most } ملغ/ل أو أقل.
residual-stale = { $reading } ملغ/ل، وقد عولج قبل أكثر من { $keeps }: عالجه من جديد قبل الشرب.
residual-no-kit = بدون جهاز: بعد { $retest } من الجرعة يجب أن تشم رائحة كلور خفيفة. لا رائحة: نفس الجرعة مرة واحدة أخرى، انتظر { $retest }. ما زال بلا رائحة: لا تشربه.
residual-already-dosed = أضفت الجرعة: لا تضف كلورا الآن. بعد { $retest } من الجرعة يجب أن تشم رائحة كلور خفيفة. رائحة قوية أو كمية زائدة: لا تشربه، خذ ماء جديدا.
residual-still-no-smell = ما زال بلا رائحة: لا تشربه ولا تضف كلورا. اغله، أو خذ ماء أصفى وأضف له جرعة جديدة.
residual-no-smell = لا رائحة: أضف نفس الجرعة مرة واحدة أخرى، انتظر { $retest }، شم من جديد. ما زال بلا رائحة كلور: لا تشربه. اغله أو خذ ماء أصفى.
residual-smells = رائحة كلور خفيفة بعد الانتظار جيدة: اشربه. إن كانت قوية فاتركه مكشوفا أو اسكبه بين أوعية نظيفة.
residual-well-not-ready = { $reading } ملغ/ل: البئر ليست جاهزة. لا تشربوا. واصلوا ضخ الماء حتى { $ready } ملغ/ل أو أقل، ثم عالجوا ماءها قبل الشرب حتى يثبت الفحص نظافته.
residual-well-ready = { $reading } ملغ/ل: ضخ البئر كاف ({ $ready } أو أقل). واصلوا معالجة مائها قبل الشرب حتى يثبت الفحص نظافته.
residual-zero = صفر مرة أخرى؟ الماء يستهلك الكلور: أزل عكره، أو جرب جرعات في دلاء (تجربة الدلاء).

## Jar test

jar-found = تجربة الدلاء: { $dose } في { $jar } تترك { $aim } ملغ/ل. أي { $each } من نفس المحلول لكل { $thousand }. أرسل لترات الخزان لأعطيك جرعته.
jar-found-tank = تجربة الدلاء: { $dose } في { $jar } تترك { $aim } ملغ/ل. لخزان { $tank }: { $measure } من نفس المحلول، حرك، انتظر { $wait }، قس من جديد.
jar-all-above = كل الدلاء فوق { $aim } ملغ/ل: أعد التجربة بكمية أقل في كل { $jar }.
jar-all-below = لم يصل أي دلو إلى { $aim } ملغ/ل: أعد التجربة بكمية أكثر في كل { $jar }.
jar-how-to = تجربة الدلاء: { $doses } مل من محلول { $percent }% في أربعة دلاء، كل منها { $jar }، حرك، انتظر { $wait }، قسها. أرسل المل وقراءة كل دلو. المطلوب { $aim } ملغ/ل.
jar-uneven = محلول أكثر يجب أن يترك كلورا أكثر؛ هذه القراءات تصعد وتنزل. من فضلك أعد تجربة الدلاء.

## Stock and people

people = { $people-n ->
    [zero] { $people } شخص
    [one] { $people } شخص
    [two] { $people } شخص
    [few] { $people } أشخاص
    [many] { $people } شخصا
   *[other] { $people } شخص
}
supply-clear-water = ماء صافي
supply-cloudy-water = ماء عكر
stock-counted = { $product } عدد { $count }
stock-measured = { $amount } { $product }
supply-treats = { $stock } يكفي لمعالجة حوالي { $litres } { $water }.
supply-lasts = { $stock }: حوالي { $days } لعدد { $people } بمعدل { $each } للفرد يوميا ({ $drinkingdays } إذا كان للشرب فقط، { $drinking }).
supply-serves = { $stock }: حوالي { $people } لمدة { $days } بمعدل { $each } للفرد يوميا ({ $drinkingpeople } إذا كان للشرب فقط، { $drinking }).
supply-needs = { $people }، { $days }، { $each } للفرد يوميا = { $litres } { $water }: { $need }. اطلب { $measure } (معها { $margin }% احتياط).
supply-counted-cloudy = حسبتها لماء عكر.
supply-ages = لكن صلاحيته { $months } شهر فقط.
supply-if-cloudy = الماء العكر يحتاج الضعف.

## Keeping

storage-water = احفظ الماء المعالج مغطى في وعاء نظيف ضيق الفم. اسكب أو استعمل صنبورا أو مغرفة: لا تدخل يدك. اشربه خلال { $keeps }، ثم عالجه من جديد.
storage-hands = إن دخلته يد أو كوب وسخ فعالجه من جديد.
storage-rinse = اشطف الوعاء قبل ملئه: { $ml } مبيض في { $litre } ماء، { $seconds } ثانية.
storage-product = احفظ { $product } في عبوة مغلقة ومكان بارد ومظلم، بعيدا عن الأطفال وعن الأحماض والمنظفات الأخرى. استبدل العبوة بعد { $months } شهر.
storage-product-by-pack = احفظ { $product } في عبوة مغلقة ومكان بارد وجاف ومظلم، بعيدا عن الأطفال. لا تستعملها بعد التاريخ المكتوب عليها.

## Boiling, sun, filters

head-boil = اغله حتى غليان قوي، أبقه يغلي { $wait }، واتركه يبرد مغطى.
head-boil-cloudy = رسبه ورشحه، اغله حتى غليان قوي، أبقه يغلي { $wait }، واتركه يبرد مغطى.
if-high = فوق { $altitude } م أو في الجبال: { $wait }.
boiling-point = على ارتفاع { $altitude } م يغلي الماء عند { $celsius } مئوية: حرارة تكفي لقتل كل جراثيم ماء الشرب.
head-sun = قوارير شفافة حتى { $size } في الشمس: { $wait }.
head-sun-unsure = قوارير شفافة حتى { $size }: { $sunny } إن كانت الشمس قوية طول النهار، وإلا { $wait }. لا تنفع في المطر.
head-sun-rain = الشمس لا تجعل الماء آمنا في المطر. اغله أو استعمل الكلور. أو اجمع ماء مطر نظيفا وعالجه.
fill-and-shake = املأ ثلاثة أرباعها، رجها، أكمل ملئها، ضعها على جنبها.
head-filter = فلتر { $pore } ميكرون{ $stops }{ $passes }.
head-filter-unknown = فلتر حجم مسامه غير معروف{ $stops }{ $passes }. ابحث عن رقم الميكرون عليه.
filter-stops = { " " }يوقف { $list }
filter-passes-after-stops = ؛ ولا يوقف { $list }
filter-passes-only = { " " }لا يوقف { $list }
reason-kills-all = الغلي يقتل كل الجراثيم، حتى في الماء العكر والبارد.
reason-nothing-else = لا شيء مما ذكرته يجعله آمنا؛ النار تفعل.
reason-only-one = هو الوحيد مما ذكرته الذي ينفع هنا.
reason-two-barriers = خطوتان أأمن من خطوة.
reason-widest-cover = هو يوقف جراثيم أكثر من غيره مما عندك.
head-choose = الأفضل هنا: { $first }.
head-choose-then = الأفضل هنا: { $first }. إن لم يمكن: { $second }.
head-choose-nothing = الأفضل: { $first }. قل لي ما عندك: مبيض، حبوب، يود، فلتر، شمس.
method-pair = { $one } ثم { $two }

organism-bacteria = البكتيريا
organism-viruses = الفيروسات
organism-giardia = الجيارديا
organism-cryptosporidium = الكريبتوسبوريديوم
organism-some = بعض { $what }
list-two = { $one } و{ $two }
list-two-or = { $one } أو { $two }
list-more = { $one }، { $rest }

## Cautions: one short sentence each

caution-absolute-pore = يجب أن يكون الرقم مطلقا (أو لحجز أكياس الطفيليات)، لا اسميا.
caution-bottle-size = قوارير PET شفافة، لا أباريق زجاج ولا أوعية كبيرة.
caution-clean-tank-first = نظف الخزان أولا؛ ولا تستعمل أبدا خزانا كان فيه وقود أو مجاري.
caution-cool-and-dark = احفظه في مكان بارد ومظلم.
caution-danger-signs = دم أو عيون غائرة أو لا بول أو ضعف شديد: إلى المركز الصحي الآن.
caution-fresh-daily = حضره جديدا كل يوم.
caution-gloves-and-air = البس قفازات، افتح الأبواب، احم العينين.
caution-keep-from-children = بعيدا عن الأطفال.
caution-keep-treating = واصل معالجة ماء البئر حتى يثبت الفحص نظافته.
caution-let-stand = قوي جدا؟ اتركه مكشوفا أو اسكبه بين أوعية نظيفة.
caution-narrow-neck = وعاء مغطى ضيق الفم، لا تدخل يدك فيه.
caution-never-mix = لا تخلطه أبدا بحمض أو أمونيا: غاز سام.
caution-not-for-drinking = ليس للشرب.
caution-not-until-pumped = لا تشرب حتى تضخ البئر ويقاس كلورها.
caution-rehydrate = محلول الإرواء برشفات صغيرة.
caution-retest-later = قس الكلور من جديد بعد الانتظار.
caution-stir-tank = أضف الجرعة أثناء الملء أو حرك جيدا؛ أغلق الصنابير مدة الانتظار.
caution-tablet-too-strong = حبة أقوى من اللازم: عالج بها ماء أكثر.
caution-well-clear-first = بئر عكرة: انزحها أولا حتى تصفو.
caution-well-ph = بهذه الحموضة يضعف تعقيم البئر بالكلور: اسأل مكتب المياه.
caution-chemicals-stay = الكيماويات والملح تبقى فيه.
caution-cold-takes-longer = البارد يحتاج وقتا أطول.
caution-cryptosporidium-survives = الكريبتوسبوريديوم لا يموت.
caution-fresh-air = غاز: اخرج إلى هواء نقي.
caution-giardia-partly = الجيارديا قد لا تموت.
caution-higher-boil-longer = في الجبال: أطل الغلي.
caution-iodine-unsuitable = لا لحامل ومريض غدة ورضيع ولا لمدة طويلة.
caution-leptospira-passes = اللبتوسبيرا تمر منه.
caution-label-first = إن كان على ملصقه جرعة لماء الشرب فاتبعها.
caution-no-shorter-wait = لا تقصر الانتظار.
caution-medical-help = اطلب مساعدة طبية الآن.
caution-no-vomiting = لا تجعل المصاب يتقيأ.
caution-rinse-with-water = اشطف بالماء.
caution-not-in-rain = ليس في المطر.
caution-old-bottle = عبوتك عمرها فوق سنة: خذ جديدة.
caution-pore-unknown = حجم المسام غير معروف: لا تعتمد عليه وحده.
caution-smell-check = بعد الانتظار يجب أن تشم رائحة كلور خفيفة؛ إن لم تشم، كرر نفس الجرعة مرة واحدة وانتظر من جديد؛ إن لم تشم بعدها، لا تشربه.
caution-second-method = استعمل طريقة ثانية أيضا.
caution-sewage = مجاري: اغله إن أمكن.
caution-spores-survive = أبواغ تتحمل الغلي تحتاج ضغطا: ليس لتعقيم الأدوات الطبية.
caution-strain-first = دعه يركد ورشحه بقماش أولا.
caution-print-test = يجب أن تقرأ الكتابة من خلال القارورة الممتلئة.
caution-lower-figure = أخذت الرقم الأقل في الملصق.
caution-too-murky = إن لم تستطع قراءة الكتابة من خلاله، اغله.
caution-unscented-only = مبيض عادي فقط.
caution-viruses-pass = الفيروسات تمر: اغله أو عالجه بالكلور أيضا.
caution-weak-immunity-boil = رضيع أو ضعيف مناعة: اغله.
caution-two-days = شمس غير مؤكدة؟ اتركها اليومين.

extra-lower-figure = أخذت رقم الملصق الأقل.
extra-old-bottle = عبوة قديمة: خذ جديدة.
extra-see-health-worker = المريض يحتاج عاملا صحيا ومحلول الإرواء الآن.

covers = يقتل: البكتيريا { $bacteria }، الفيروسات { $viruses }، الجيارديا { $giardia }، الكريبتوسبوريديوم { $cryptosporidium }.
boil-kills-all = الغلي يقتلها كلها.
cover-yes = نعم
cover-partly = جزئيا
cover-no = لا
defer = تعليمات مكتب الصحة عندك أولا.

## Changed doses

adjusted-faster = { $echo }. فقط إن كان صافيا وليس باردا: الجرعة كلها { $measure }، انتظر { $wait }. طعم أقوى، لا أمان أكثر.
adjusted-weaker = { $echo }. المرة القادمة، فقط إن كان صافيا وليس باردا: { $measure }، انتظر { $wait }. هذا الماء: اتركه مكشوفا.
cannot-faster = لا يمكن تقصير المدة بأمان. الأسرع: غليان قوي ثم تبريد.
of-solution = لا تشربه أبدا: للتنظيف فقط. حضره جديدا كل يوم، احفظه مغلقا وعليه ملصق وبعيدا عن الأطفال. لماء الشرب أرسل اللترات ونسبة % العبوة.
too-strong = الكلور كثير؟ اتركه مكشوفا بضع ساعات أو اسكبه بين أوعية نظيفة. لا تقصر الانتظار أبدا. إن شربه أحد وأحس بمرض: اطلب المساعدة الطبية.
cannot-weaker = أقل من هذا ليس آمنا هنا. للطعم: بعد الانتظار اتركه مكشوفا أو اسكبه بين أوعية نظيفة.

## Questions

ask-product = ما المنتج الذي عندك: مبيض أو حبوب كلور أو مسحوق كلور أو يود؟
ask-product-chlorine = أي كلور عندك: مبيض أو هيبوكلوريت كالسيوم أو مسحوق تبييض؟
ask-product-unfit-for-well = هذا لا يصلح للآبار. هل عندك مبيض أو هيبوكلوريت كالسيوم أو مسحوق تبييض؟
ask-product-unfit-for-cleaning = هذا لا يصلح لذلك. هل عندك مبيض أو مسحوق كلور أو حبوب كلور؟
ask-product-unfit-for-residual = هذا لا يرفع الكلور. هل عندك مبيض أو مسحوق كلور أو حبوب كلور؟
ask-product-unfit-for-supply = كم يكفي هذا؟ مكتوب على ملصقه. أي منتج آخر عندك: مبيض أو مسحوق كلور أو حبوب كلور أو يود؟
ask-product-bleach-tablet = ماذا في هذه الحبوب؟ أرسل ما يقوله الملصق مع الملغ. يجب أن تكون مصنوعة لماء الشرب.
ask-product-chlorine-form = هل الكلور سائل أو مسحوق أو حبوب؟ أرسله مع % أو ملغ من الملصق.
ask-product-iodine-form = أي يود هو: صبغة يود أو بوفيدون يود أو حبوب يود؟
ask-product-pool = كلور المسابح قد يكون مثبتا: لا يصلح لماء الشرب. هل عندك مبيض عادي أو حبوب لماء الشرب أو يود؟ وإلا فاغل الماء.
ask-product-powder-form = أي مسحوق: هيبوكلوريت كالسيوم أو مسحوق تبييض؟ أرسل % من ملصقه.
ask-product-spoiled = مبيض معطر أو ثخين أو ملون لا يصلح لماء الشرب. هل عندك مبيض عادي أو حبوب أو يود؟ وإلا فاغل الماء.
ask-product-tablet-form = هل الحبوب كلور أو يود؟ أرسل الاسم والملغ من الشريط.
ask-product-two-products = هذا أكثر من منتج واحد. أيها ستستعمل؟

ask-strength = كم % مكتوب على ملصق { $product }؟
ask-strength-no-label = بدون % لا أعطي جرعة. هل تجد عبوة أخرى عليها ملصق؟ وإلا فاغل الماء: غليان قوي ثم يبرد. إن لم تكن عندك نار أيضا فأرسل: لا ملصق ولا نار.
ask-strength-degrees = كم % مكتوب على ملصق { $product }؟ الدرجات لها معنيان.
ask-strength-denied = إذن كم %؟ اقرأ لي ملصق { $product }.
ask-strength-bound = كم % بالضبط على ملصق { $product }؟ "أقل من" لا يكفي لحساب الجرعة.
ask-strength-guessed = من فضلك انظر ملصق { $product }: كم % مطبوع عليه؟
ask-strength-outside = { $product } لا يكون بهذا التركيز. كم % مطبوع على الملصق؟
ask-strength-is-target = هذا للماء. كم % مطبوع على ملصق { $product }؟
ask-strength-is-solution = هذا تركيز للتنظيف. كم % مطبوع على ملصق { $product }؟
ask-strength-thinned = { $product } مخفف لا يعرف تركيزه. كم % على ملصق عبوة لم تفتح أو لم تخلط؟ إن لم توجد فاغل الماء.
ask-strength-two = نسبتان % مختلفتان. أيهما مطبوع على ملصق { $product }؟
ask-strength-unreadable = لا أستطيع قراءة %. من فضلك أرسلها من جديد، مثل: 3.5%
ask-strength-wide = هذا المدى واسع. كم % بالضبط على ملصق { $product }؟

ask-tablet = كم ملغ في الحبة الواحدة؟ مكتوب على الشريط أو العلبة.
ask-tablet-compound = هل هذا ملغ اليود؟ كثير من الحبوب تكتب وزن المركب. كم ملغ يود تعطي الحبة الواحدة؟
ask-tablet-two = حجمان من الحبوب. أي ملغ ستستعمل؟
ask-tablet-outside = لا أعرف حبة لماء الشرب كهذه. كم ملغ مطبوع على الشريط؟

ask-volume = كم لتر ماء تريد أن تعالج؟
ask-volume-uncounted = كم لتر كلها معا؟
ask-volume-unsized = كم لتر يسع؟ (أحجام الدلاء والأوعية تختلف)
ask-volume-outside = لا أستطيع استعمال هذه الكمية. كم لتر ماء تريد أن تعالج؟
ask-volume-two = أكثر من كمية ماء واحدة. كم لتر تريد أن تعالج في المرة الواحدة؟
ask-volume-unreadable = لا أستطيع التأكد من الكمية. كم لتر ماء؟ اكتبها بدون نقط ولا فواصل، مثل: 1000 لتر

ask-volume-solution = كم لتر من المحلول تريد أن تحضر؟
ask-volume-tank = كم لتر ماء فيه؟
ask-jar = كم لتر ماء كان في كل دلو أو وعاء؟

ask-diameter = كم متر عرض البئر؟
ask-diameter-outside = لا أستطيع استعمال هذا العرض. كم متر عرض البئر؟
ask-depth = كم متر عمق الماء في البئر؟ أنزل حجرا بحبل وقس الجزء المبلل.
ask-well-depth-only = هذا عمق البئر. كم متر عمق الماء نفسه فيها؟ أنزل حجرا بحبل وقس الجزء المبلل.
ask-water-depth-outside = لا أستطيع استعمال هذا العمق. كم متر ماء في البئر؟
ask-target = ما التركيز المطلوب؟ لليدين { $hands }%، للأرضيات { $floors }%، للدم { $blood }%، لقيء أو براز الكوليرا { $stools }%. قد يقول مكتب الصحة غير ذلك.
ask-target-outside = لا أستطيع استعمال هذا التركيز. كم % تريد المحلول؟ لليدين { $hands }%، للأرضيات { $floors }%، للدم { $blood }%.
ask-target-too-strong = تركيز { $product } عندك أضعف من ذلك. كم % تريد المحلول؟ لليدين { $hands }%، للأرضيات { $floors }%، للدم { $blood }%.
ask-residual = كم يظهر فحص الكلور، بالملغ/ل (أو جزء في المليون)؟
ask-people = كم عدد الناس؟
ask-people-outside = لا أستطيع استعمال هذا العدد. كم عدد الناس؟
ask-days = لكم يوم؟ (أو قل لي كم عندك منه.)
ask-days-outside = لا أستطيع استعمال هذا. لكم يوم؟
ask-stock-liquid = كم لتر { $product } عندك؟ أو: لكم شخص ولكم يوم؟
ask-stock-powder = كم كغ أو غ من { $product } عندك؟ أو: لكم شخص ولكم يوم؟
ask-stock-tablets = كم حبة عندك؟ أو: لكم شخص ولكم يوم؟
ask-stock-outside = لا أستطيع استعمال هذه الكمية. كم عندك من { $product }؟

last-resort = آخر حل، التركيز غير معروف: { $drops } لكل لتر، انتظر { $wait }. يجب أن تشم رائحة كلور خفيفة؛ إن لم تشم، كرر الجرعة مرة واحدة وانتظر من جديد؛ إن لم تشم بعدها، لا تشربه.
last-resort-total = آخر حل، التركيز غير معروف: { $total } في المجموع ({ $drops } لكل لتر)، انتظر { $wait }. يجب أن تشم رائحة كلور؛ إن لم تشم، كرر الجرعة مرة واحدة وانتظر؛ إن لم تشم بعدها، لا تشربه.

## No dose

refused-chemical = لا جرعة: الكلور واليود والغلي والفلاتر لا تزيل الوقود أو المبيدات أو النفايات أو الملح. لا تشربه. ابحث عن ماء آخر وأخبر مكتب الصحة.
refused-iodine_unsuitable = لا يود للحامل أو مريض الغدة الدرقية أو الرضيع أو لأكثر من أسابيع قليلة. اغل الماء بدلا منه، أو استعمل مبيضا عاديا: أرسل % واللترات.
refused-mixed = خطر: لا تخلط المبيض أبدا بحمض أو خل أو أمونيا أو منظفات: غاز سام. افتح الأبواب واخرج إلى هواء نقي. استعمل مبيضا عاديا وماء فقط.
refused-other_use = أجيب عن ماء الشرب والتنظيف فقط. للجروح أو العيون أو غسيل الكلى أو الأسماك أو المسابح أو غسل الملابس أو الطعام اسأل عاملا صحيا.
refused-over_limit = أكثر من ضعف الجرعة ليس آمنا للشرب.

## Somebody hurt or ill

first-aid = اطلب مساعدة طبية الآن. بلع: لا تجعله يتقيأ، اشطف فمه، رشفات ماء إن كان واعيا. عين أو جلد: اشطف { $rinse } بالماء. غاز: هواء نقي.
first-aid-powder = اطلب مساعدة طبية الآن. بلع: لا تجعله يتقيأ، اشطف فمه، رشفات ماء إن كان واعيا. جلد: انفض المسحوق. عين أو جلد: اشطف { $rinse }. غاز: هواء نقي.
# Before first aid, where the deployment names a number to call.
help-line = اتصل { $number }.
first-aid-then = ثم اسأل من جديد.
unsure = بلعه أحد أو رش عليه؟ اشطف، لا تجعله يتقيأ، اطلب مساعدة طبية. إن أردت الجرعة فقط فأرسل المنتج و % واللترات وحدها.
illness = أعط محلول الإرواء رشفات صغيرة وواصل الرضاعة. إلى المركز الصحي الآن عند دم، عين غائرة، لا بول، ضعف شديد، لا يستطيع الشرب. لا أشخص مرضا.
illness-danger = إلى المركز الصحي الآن. لا شيء بالفم لفاقد الوعي أو من لا يستطيع البلع. الواعي: محلول الإرواء رشفات صغيرة في الطريق وواصل الرضاعة. لا أشخص المرض.
illness-feeding = اخلط محلول الإرواء كما على كيسه بماء آمن. واصل إعطاء الطعام.
illness-water = عالج كل ماء الشرب الآن، اغسلوا الأيدي بالصابون، أخبر مكتب الصحة إن مرض أكثر من واحد.

## Service

kept = حفظت: { $product }{ $label }. الآن أرسل اللترات فقط.
kept-part = حفظت: { $product }. كم % أو ملغ على ملصقه؟ أرسل: تذكر { $product } ...
kept-figure = حفظت:{ $label }. أي منتج هو؟
not-kept = لم أحفظ ذلك: لست متأكدا من المنتج وتركيزه. أرسل مثلا: تذكر مبيض 5%
kept-opened = فتح في { $date }.
kept-future = { $date } لم يأت بعد. متى فتحته؟ أرسل مثلا: فتحته 1 مارس 2026
bottle = { $bottle }.
bottles = أتذكر: { $list }
bottles-none = لا أتذكر أي عبوة لك. أرسل مثلا: تذكر مبيض 5%، 1 لتر
left = بقي: { $amount }، يكفي لمعالجة { $litres }.
left-amount = بقي: { $amount }.
left-days = بمعدلك تكفي { $days }: أحضر غيرها الآن.
left-short = حسب حسابي بقي { $amount } فقط في عبوتك.
left-empty = حسب حسابي هي فارغة الآن: أحضر غيرها.
age-soon = استعمله قريبا: صلاحيته { $months } شهر.
age-now = عمره أكثر من { $months } شهر: خذ جديدا.
age-estimate = تقدير: بقي حوالي { $percent }% من قوته إن حفظ في حرارة { $celsius } مئوية. الجرعة لا تعتمد على ذلك: تأكد من الرائحة.
undone = لم تحسب. { $left }
nothing-to-undo = لم أحسب لك أي جرعة اليوم.
will-remind = سأراسلك بعد { $wait }.
nothing-to-wait-for = لا انتظار لأذكرك به. اطلب جرعة أولا.
reminder-chlorine = انتهت { $wait }. إن كان الماء عكرا أو باردا فانتظر أكثر. شمه: رائحة كلور خفيفة، جاهز. لا رائحة: نفس الجرعة مرة واحدة أخرى وانتظر من جديد.
reminder-disinfectant = انتهت { $wait }: جاهز للشرب. إن كان الماء عكرا أو باردا فانتظر أكثر.
reminder-retest = انتهت { $wait }: قس الكلور من جديد قبل أن يشرب أحد.
reminder-sun = انتهت { $wait }. إن كانت الشمس قوية فهو جاهز للشرب؛ إن لم تكن فاتركه أكثر.
reminder-surface = انتهت { $wait }: اشطف السطح.
reminder-well = انتهت { $wait }: ضخ ماء البئر ثم قس الكلور. لا يشرب أحد قبل ذلك.
seen = سؤالك الآخر ({ $topic }): أرسله وحده.
topic-boil = الغلي
topic-dose = الجرعة
topic-dilute = التنظيف
topic-storage = الحفظ
topic-well = البئر
topic-why = لماذا
set-language = اللغة الآن: { $language }.
set-language-unknown = لا أتكلم { $language } بعد. أواصل بالعربية.
set-units-metric = الوحدات الآن: لتر ومل.
set-units-us = الوحدات الآن: غالون أمريكي.
set-units-imperial = الوحدات الآن: غالون بريطاني.
help = أرسل المنتج و % الملصق واللترات. مثلا: 20 لتر عكر، مبيض 5%. واسأل: غلي، بئر، تنظيف، فحص الكلور، مخزون، حفظ، المزيد، لماذا، قف، انس.
greeting = ماتون يقول كيف تجعل الماء آمنا. أرسل المنتج و % واللترات، مثلا: 20 لتر عكر، مبيض 5%. أو أرسل: مساعدة.
stopped = توقفت: لا رسائل دون طلب. أسئلتك يجاب عنها. للعودة أرسل: ابدأ.
started = الرسائل مفتوحة. أرسل المنتج و % واللترات، مثلا: 20 لتر عكر، مبيض 5%. أو أرسل: مساعدة.
dropped = لم أعد أتذكر عبوتك: { $product }.
forgotten = كل ما حفظ عنك حذف.
not-understood = لم أفهم. أرسل المنتج و % واللترات، مثلا: 20 لتر عكر، مبيض 5%. أو أرسل: مساعدة.
nothing-before = اطلب جرعة أولا. أرسل المنتج و % واللترات، مثلا: 20 لتر عكر، مبيض 5%.
nothing-more = هذا كل شيء. للمصادر أرسل: لماذا.
why = { $dose }{ $wait }{ $logs } المصادر: { $sources }.
why-dose = تعطي { $mg } ملغ/ل.
why-wait-rule = { " " }الانتظار: قاعدة منشورة.
why-wait-unknown = { " " }الانتظار: قاعدة منشورة، الحرارة غير معروفة.
why-wait-cold = { " " }الانتظار: أطول للماء البارد.
why-wait-ct = { " " }الانتظار: زمن تماس { $reached } من { $needed } ملغ.د/ل مطلوبة، على حساب { $residual } ملغ/ل.
why-logs = { " " }عند { $celsius } مئوية وحموضة { $ph }، على حساب { $residual } ملغ/ل: زمن تماس { $reached } من { $needed } ملغ.د/ل؛ الفيروسات { $viruses } لوغ، الجيارديا { $giardia } لوغ، الكريبتوسبوريديوم لا شيء.
why-boil = بعض الهيئات تطلب الغلي الأطول في الأعالي فقط، والهيئة العالمية تطلب الغليان القوي فقط: آخذ القاعدة الأشد.
source-published = { $title } ({ $publisher }، { $year })
source-undated = { $title } ({ $publisher })
source-memory = { $title } ({ $publisher }؛ من الذاكرة)
source-common = ممارسة شائعة بدون مصدر

## The printed chart: read from a wall, so no message of it has to fit an SMS

chart-title = كم من المبيض يجعل الماء آمنا
chart-caption = أضف هذا القدر من المبيض السائل العادي. يجب أن تكون نسبة % هي المكتوبة على عبوتك.
chart-water = الماء
chart-bottle = مبيض { $percent }%
chart-clear = صافي
chart-cloudy-or-cold = عكر أو بارد
chart-imperial-quarts = { $value } كوارت بريطاني
chart-teaspoons = { $spoons } ملعقة شاي
chart-tablespoons = { $spoons } ملعقة أكل
chart-or = أو { $way }
chart-then-wait = ثم انتظر
chart-wait-if-cold = البارد: { $wait }
chart-legend = قس بطريقة واحدة فقط: القطرات أو الملليلتر (مل) أو الملاعق. ملعقة شاي: ملعقة شاي ممسوحة. ملعقة أكل: ملعقة أكل ممسوحة. بارد: بارد عند لمسه باليد.

chart-step-add = ابحث عن كمية الماء في الجدول. أضف المبيض بالقدر المكتوب وحرك.
chart-step-wait = انتظر المدة المكتوبة في الصف الأخير. لا يشرب أحد قبل ذلك.
chart-survive = المبيض لا يقتل { $list }.
chart-may-survive = قد لا يقتل المبيض { $list }.

chart-caution-chemicals-stay = المبيض لا يزيل الوقود ولا المبيدات ولا النفايات ولا الملح: ابحث عن ماء آخر.
chart-caution-keep-from-children = احفظ المبيض بعيدا عن الأطفال.
chart-caution-label-first = إن كانت على العبوة تعليمات لماء الشرب فاتبعها.
chart-caution-never-mix = لا تخلطه أبدا بحمض أو أمونيا: غاز سام.
chart-caution-old-bottle = استعمل عبوة عمرها أقل من سنة.
chart-caution-smell-check = شمه. يجب أن تشم رائحة كلور خفيفة. إن لم تشم، أضف نفس الكمية مرة واحدة أخرى وانتظر من جديد. إن لم تشم بعدها، لا تشربه.
chart-caution-strain-first = الماء العكر: دعه يركد، ثم رشحه بقماش نظيف.
chart-caution-too-murky = ماء لا تستطيع قراءة الكتابة من خلاله لشدة عكره: لا تستعمل المبيض، اغل الماء.
chart-caution-unscented-only = مبيض عادي فقط: بلا عطر ولا لون، غير ثخين، ولا منظف آخر فيه.
chart-caution-weak-immunity-boil = للرضع ومن مناعتهم ضعيفة: اغل الماء بدلا من ذلك.

chart-sources = المصادر: { $sources }.
chart-printed = طبع في { $day }/{ $month }/{ $year }.

## Terminal and command line

terminal-greeting = ماتون: كيف تجعل الماء الذي عندك آمنا للشرب. اتبع مكتب الصحة عندك أولا.
terminal-examples = جرب:  2 غالون عكر مبيض 1%  |  كم أغلي على ارتفاع 2400 متر  |  تذكر مبيض 5%
terminal-bye = ابق بخير.
