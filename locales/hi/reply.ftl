# What matone says in Hindi.
#
# The program hands over every figure, already written out; no message may hold a figure of its
# own. Counts ending in -n only choose the plural form. An SMS holds 70 characters of this script.
# A dose answer is a head and then cautions, as many as one SMS holds; the others wait for और.

## Names

product-bleach = ब्लीच
product-bleaching_powder = ब्लीचिंग पाउडर
product-calcium_hypochlorite = कैल्शियम हाइपोक्लोराइट
product-chlorine_dioxide = क्लोरीन डाइऑक्साइड
product-iodine_tablet = आयोडीन गोली
product-iodine_tincture = टिंचर आयोडीन
product-nadcc = क्लोरीन गोली
product-povidone_iodine = पोविडोन आयोडीन

method-fire = उबालना
method-filter = फिल्टर
method-sunlight = पारदर्शी बोतल में धूप

product-any = क्लोरीन

clarity-clear = { " " }साफ
clarity-cloudy = { " " }गंदा
# Said where the answer has no room for cloudy water and takes the water for clear.
clarity-assumed = { " " }साफ
warmth-cold = { " " }ठंडा
warmth-celsius = { " " }{ $celsius }°C

## Measures

volume-litres = { $value } L
volume-us-gallons = { $value } US गैलन
volume-us-quarts = { $value } US क्वार्ट
volume-imperial-gallons = { $value } UK गैलन
label-percent = { " " }{ $value }%
label-mg = { " " }{ $value }mg

drops = { $drops } बूंद
measure-drops = { $drops } ({ $ml } ml)
measure-ml = { $ml } ml
measure-ml-teaspoon = { $ml } ml ({ $spoons } चाय चम्मच)
measure-ml-tablespoon = { $ml } ml ({ $spoons } बड़ा चम्मच)
measure-later = यानी { $measure }।
tablets = { $count } गोली
grams = { $grams } ग्राम
kilograms = { $kilograms } किलो
metres = { $metres } मीटर
minutes = { $value } मिनट
hours = { $value } घंटे
days = { $value } दिन
days-n = { $value } दिन

## A dose

echo = { $volume }{ $clarity }{ $warmth }, { $product }{ $label }
echo-remembered = { $volume }{ $clarity }{ $warmth }, याद से { $product }{ $label }
head-liquid = { $echo }: { $measure }, हिलाएँ, { $wait } रुकें।
head-liquid-cloudy = { $echo }: निथार-छान { $measure } मिला { $wait } रुकें।
head-tablets = { $echo }: { $measure }, हिलाएँ, { $wait } रुकें।
head-tablets-cloudy = { $echo }: निथार-छान { $measure } मिला { $wait } रुकें।
head-powder = { $echo }: { $measure } एक बाल्टी पानी में घोलें, सारे पानी में डालें, हिलाएँ, { $wait } रुकें।
head-powder-cloudy = { $echo }: निथारें, छानें। { $measure } एक बाल्टी पानी में घोलें, सारे पानी में डालें, हिलाएँ, { $wait } रुकें।
head-stock = { $echo }: { $grams } में पानी मिलाकर कुल { $litres } करें = { $percent }% घोल। इस घोल का { $measure } डालें, हिलाएँ, { $wait } रुकें।
head-stock-cloudy = { $echo }: निथारें, छानें। { $grams } में पानी मिलाकर कुल { $litres } करें = { $percent }% घोल। इसका { $measure } डालें, हिलाएँ, { $wait } रुकें।
head-label = { $echo }: लेबल जितना मिलाएँ, { $wait } रुकें।
head-label-cloudy = { $echo }: निथार-छान लेबल जितना मिला { $wait } रुकें।

if-cloudy-or-cold = गंदा: { $measure }, { $wait }; ठंडा: उतना ही, { $coldwait }।
head-new-tank = { $echo }। पहले नई या गंदी टंकी: रगड़कर धोएँ, भरें, { $measure } डालें, { $wait } छोड़ें, खाली करें। फिर पानी में दवा डालें।
if-new-tank = नई या गंदी टंकी: रगड़कर धोएँ, भरें, { $measure } डालें, { $wait } छोड़ें, खाली करें; फिर पानी में दवा डालें।
if-cloudy-or-cold-same = गंदा या ठंडा: { $measure }, { $wait }।
if-cloudy = गंदा: छानें, { $measure }, { $wait }।
if-cold = ठंडा: { $measure }, { $wait }।
if-cold-wait = ठंडा: { $wait } रुकें।

more-hint = और
# Words that people may send next; each is one that the lexicon reads.
next-why = क्यों
next-remind = याद दिलाओ
next-help = मदद

## Wells

head-well = कुआँ { $across } चौड़ा, पानी { $depth } ({ $volume }), अभी मत पिएँ: { $measure } { $product } बाल्टियों में घोलें, कुएँ में डालें, हिलाएँ, { $wait } छोड़ें। मत पिएँ, जब तक पानी निकालकर { $ready } mg/L न हो।
head-well-cloudy = गंदा कुआँ: पानी निकालें, साफ होने दें। फिर { $across } चौड़ा, पानी { $depth } ({ $volume }): { $measure } { $product } बाल्टी में घोल डालें, हिलाएँ, { $wait } छोड़ें। मत पिएँ, जब तक निकालकर { $ready } mg/L न हो।
well-wall = पहले { $litres } पानी में इसका { $ml } मिलाकर कुएँ की दीवार रगड़ें।
well-wall-stock = पहले { $litres } पानी में { $percent }% घोल का { $ml } मिलाकर कुएँ की दीवार रगड़ें।
well-hurry = कुएँ को { $wait } चाहिए। सिर्फ आपात हालत में { $emergency }, फिर पानी निकालें और जाँचें। उससे पहले कोई न पिए।
well-emergency = सिर्फ आपात हालत में: इसकी जगह { $wait }।

## Solutions for hands, cleaning and stock

head-dilute-liquid = { $volume } { $target }% घोल: { $measure } { $product } + { $water } पानी (एक हिस्सा + { $parts } हिस्से पानी)।
head-dilute-as-is = { $volume } { $target }% घोल: { $product } जैसा है वैसा लें, पानी मत मिलाएँ।
head-dilute-tablets = { $volume } { $target }% घोल: { $count } { $product } (हर लीटर में { $per }), पानी भरकर कुल { $volume } करें।
head-dilute-made-up = { $volume } { $target }% घोल: { $measure } { $product } (हर लीटर में { $per }), पानी भरकर कुल { $volume } करें।
dilute-hands = हाथों के लिए: आँख में नहीं, पीना नहीं।
dilute-surfaces = जगह को { $wait } गीला रखें, फिर पानी से धोएँ। पीना नहीं।
dilute-stock = रोज नया बनाएँ। ऐसे ही पीना नहीं।
dilute-any-volume = किसी भी मात्रा के लिए: एक हिस्सा यह + { $parts } हिस्से पानी।

## Chlorine tests

residual-enough = { $reading } mg/L काफी है (कम से कम { $least })। ढककर रखें, { $keeps } के अंदर पिएँ।
residual-enough-at-use = { $reading } mg/L। दवा डालने के { $retest } बाद: कम है (कम से कम { $aim }), मत पिएँ। पीने के बर्तन में, { $keeps } तक: काफी है (कम से कम { $atuse })। आपका कौन सा है?
residual-low = { $reading } mg/L कम है, कम से कम { $aim } चाहिए। अभी मत पिएँ: क्लोरीन डालें, { $retest } रुकें, फिर जाँचें। मात्रा पूछने को लीटर, दवा और % भेजें।
residual-add = { $reading } mg/L कम है। { $volume } में { $measure } { $product } डालें, हिलाएँ, { $wait } रुकें, फिर जाँचें: कम से कम { $aim } mg/L हो, तभी कोई पिए।
residual-add-zero = { $reading } mg/L। दवा कभी नहीं डाली? पूरी मात्रा पूछें। डाली है: { $volume } में { $measure } { $product } डालें, हिलाएँ, { $wait } रुकें, फिर जाँचें: { $aim } mg/L हो, तभी पिएँ।
residual-add-stock = { $reading } mg/L कम है। { $grams } { $product } में पानी मिलाकर कुल { $litre } करें = { $percent }% घोल: { $volume } में इसका { $measure } डालें, { $wait } रुकें, फिर जाँचें: { $aim } mg/L।
residual-add-zero-stock = { $reading } mg/L। दवा कभी नहीं डाली? पूरी मात्रा पूछें। डाली है: { $grams } { $product } + पानी = कुल { $litre }, { $percent }% घोल; { $volume } में इसका { $measure } डालें, { $wait } रुकें, फिर जाँचें।
residual-too-early = { $reading } mg/L, पर अभी जल्दी है, कुछ कह नहीं सकते। दवा डालने के { $retest } बाद फिर जाँचें: कम से कम { $aim } mg/L।
residual-high = { $reading } mg/L रोज पीने के लिए ज्यादा है (ज्यादा से ज्यादा { $most })। खुला छोड़ें या साफ बर्तनों में बार-बार पलटें, फिर जाँचें।
residual-too-high = { $reading } mg/L बहुत ज्यादा है: अभी मत पिएँ। { $most } mg/L या कम होने तक खुला छोड़ें या साफ बर्तनों में बार-बार पलटें।
residual-stale = { $reading } mg/L, और दवा डाले { $keeps } से ज्यादा हो गए: पीने से पहले दोबारा दवा डालें।
residual-no-kit = बिना किट: दवा डालने के { $retest } बाद क्लोरीन की हल्की गंध आए। गंध नहीं: उतनी ही दवा एक बार और डालें, { $retest } रुकें। फिर भी नहीं: मत पिएँ।
residual-already-dosed = दवा डल चुकी है: अब और मत डालें। डालने के { $retest } बाद क्लोरीन की हल्की गंध आनी चाहिए। तेज गंध, या दवा ज्यादा डल गई: मत पिएँ, नया पानी लें।
residual-still-no-smell = अब भी गंध नहीं: मत पिएँ, और दवा मत डालें। उबालें, या ज्यादा साफ पानी लाकर उसमें नए सिरे से डालें।
residual-no-smell = गंध नहीं: उतनी ही दवा एक बार और डालें, { $retest } रुकें, फिर सूँघें। फिर भी क्लोरीन की गंध नहीं: मत पिएँ। उबालें या ज्यादा साफ पानी लाएँ।
residual-smells = रुकने के बाद क्लोरीन की हल्की गंध ठीक है: पिएँ। तेज हो तो खुला छोड़ें या साफ बर्तनों में बार-बार पलटें।
residual-well-not-ready = { $reading } mg/L: कुआँ तैयार नहीं। मत पिएँ। { $ready } mg/L या कम होने तक पानी निकालते रहें, फिर जाँच साफ आने तक पानी दवा डालकर ही पिएँ।
residual-well-ready = { $reading } mg/L: कुएँ से पानी काफी निकल गया ({ $ready } या कम)। जाँच साफ आने तक पानी दवा डालकर ही पिएँ।
residual-zero = फिर शून्य? पानी क्लोरीन खा रहा है: निथारें, छानें, या बाल्टियों में मात्रा परखें (जार टेस्ट)।

## Jar test

jar-found = जार टेस्ट: { $jar } में { $dose } से { $aim } mg/L बचता है। यानी हर { $thousand } में उसी घोल का { $each }। टंकी की मात्रा के लिए उसके लीटर भेजें।
jar-found-tank = जार टेस्ट: { $jar } में { $dose } से { $aim } mg/L बचता है। { $tank } के लिए: उसी घोल का { $measure } डालें, हिलाएँ, { $wait } रुकें, फिर जाँचें।
jar-all-above = सब जार { $aim } mg/L से ऊपर: हर { $jar } में कम डालकर टेस्ट दोहराएँ।
jar-all-below = कोई जार { $aim } mg/L तक नहीं पहुँचा: हर { $jar } में ज्यादा डालकर टेस्ट दोहराएँ।
jar-how-to = जार टेस्ट: { $jar } की चार बाल्टियों में { $percent }% घोल का क्रम से { $doses } ml डालें, हिलाएँ, { $wait } रुकें, हर एक जाँचें। ml और हर जाँच का अंक भेजें। चाहिए { $aim } mg/L।
jar-uneven = ज्यादा घोल से ज्यादा क्लोरीन बचनी चाहिए; ये अंक ऊपर-नीचे हैं। जार टेस्ट दोबारा करें।

## Stock and people

people = { $people-n ->
    [one] { $people } व्यक्ति
   *[other] { $people } लोग
}
supply-clear-water = साफ पानी
supply-cloudy-water = गंदा पानी
stock-counted = { $count } { $product }
stock-measured = { $amount } { $product }
supply-treats = { $stock }: इससे करीब { $litres } { $water } पीने लायक होगा।
supply-lasts = { $stock }: { $people }, हर एक को रोज { $each }: करीब { $days } (सिर्फ पीने के लिए { $drinking }: { $drinkingdays })।
supply-serves = { $stock }: { $days }, हर एक को रोज { $each }: करीब { $people } (सिर्फ पीने के लिए { $drinking }: { $drinkingpeople } लोग)।
supply-needs = { $people }, { $days }, हर एक को रोज { $each } = { $litres } { $water }: { $need }। मँगाएँ { $measure } ({ $margin }% ज्यादा रखकर)।
supply-counted-cloudy = गंदे पानी के हिसाब से।
supply-ages = पर यह सिर्फ { $months } महीने टिकता है।
supply-if-cloudy = गंदे पानी में दोगुना लगता है।

## Keeping

storage-water = दवा डला पानी ढककर, छोटे मुँह के साफ बर्तन में रखें। उड़ेलकर, नल या डंडी वाले लोटे से लें: हाथ मत डालें। { $keeps } के अंदर पिएँ, फिर दोबारा दवा डालें।
storage-hands = पानी में हाथ या गंदा गिलास गया तो दोबारा दवा डालें।
storage-rinse = भरने से पहले बर्तन खंगालें: { $litre } पानी में { $ml } ब्लीच, { $seconds } सेकंड।
storage-product = { $product } बंद करके ठंडी, अँधेरी जगह रखें; बच्चों, तेजाब और दूसरे क्लीनर से दूर। { $months } महीने बाद नया लें।
storage-product-by-pack = { $product } बंद करके ठंडी, सूखी, अँधेरी जगह रखें, बच्चों से दूर। पैकेट की तारीख के बाद नहीं।

## Boiling, sun, filters

head-boil = पानी को खूब खौलाएँ, { $wait } खौलता रखें, ढककर ठंडा होने दें।
head-boil-cloudy = निथारें, छानें, खूब खौलाएँ, { $wait } खौलता रखें, ढककर ठंडा होने दें।
if-high = { $altitude } मीटर से ऊपर या पहाड़ पर: { $wait }।
boiling-point = { $altitude } मीटर पर पानी { $celsius } C पर खौलता है: पीने के पानी के सब कीटाणु मारने को काफी है।
head-sun = { $size } तक की पारदर्शी बोतलें धूप में रखें: { $wait }।
head-sun-unsure = { $size } तक की पारदर्शी बोतलें: दिन भर तेज धूप हो तो { $sunny }, नहीं तो { $wait }। बारिश में नहीं।
head-sun-rain = बारिश में धूप से पानी पीने लायक नहीं होता। उबालें, या क्लोरीन डालें। या बारिश का साफ पानी जमा करके दवा डालें।
fill-and-shake = तीन चौथाई भरें, हिलाएँ, पूरा भरें, लिटाकर रखें।
head-filter = { $pore } माइक्रोन का फिल्टर{ $stops }{ $passes }।
head-filter-unknown = छेद का नाप पता नहीं। यह फिल्टर{ $stops }{ $passes }। उस पर माइक्रोन का अंक देखें।
filter-stops = { " " }रोकता है: { $list }
filter-passes-after-stops = ; नहीं रोकता: { $list }
filter-passes-only = { " " }नहीं रोकता: { $list }
reason-kills-all = उबालने से सब कीटाणु मरते हैं, गंदे और ठंडे पानी में भी।
reason-nothing-else = आपकी बताई किसी चीज से पानी पीने लायक नहीं होगा; उबालने से होगा।
reason-only-one = आपकी बताई चीजों में यही यहाँ काम करेगी।
reason-two-barriers = दो तरीके एक से ज्यादा सुरक्षित हैं।
reason-widest-cover = आपके पास की चीजों में यह सबसे ज्यादा कीटाणु रोकती है।
head-choose = यहाँ सबसे अच्छा: { $first }।
head-choose-then = यहाँ सबसे अच्छा: { $first }। न हो सके तो: { $second }।
head-choose-nothing = सबसे अच्छा: { $first }। बताएँ आपके पास क्या है: ब्लीच, गोली, आयोडीन, फिल्टर, धूप।
method-pair = { $one }, फिर { $two }

organism-bacteria = बैक्टीरिया
organism-viruses = वायरस
organism-giardia = जियार्डिया
organism-cryptosporidium = क्रिप्टोस्पोरिडियम
organism-some = कुछ { $what }
list-two = { $one } और { $two }
list-two-or = { $one } और { $two }
list-more = { $one }, { $rest }

## Cautions: one short sentence each

caution-absolute-pore = अंक पक्का (absolute) या cyst वाला हो, nominal नहीं।
caution-bottle-size = पारदर्शी PET बोतलें लें, काँच के जग या बड़े डिब्बे नहीं।
caution-clean-tank-first = पहले टंकी साफ करें; तेल, डीजल या मल वाली टंकी कभी मत लें।
caution-cool-and-dark = ठंडी, अँधेरी जगह रखें।
caution-danger-signs = खून, धँसी आँखें, पेशाब नहीं, बहुत कमजोर: अभी अस्पताल ले जाएँ।
caution-fresh-daily = रोज नया बनाएँ।
caution-gloves-and-air = दस्ताने पहनें, दरवाजे खोलें, आँखें बचाएँ।
caution-keep-from-children = बच्चों से दूर रखें।
caution-keep-treating = जाँच साफ आने तक कुएँ के पानी में दवा डालते रहें।
caution-let-stand = गंध तेज? खुला छोड़ें या साफ बर्तनों में बार-बार पलटें।
caution-narrow-neck = ढका, छोटे मुँह का बर्तन, हाथ मत डालें।
caution-never-mix = तेजाब या अमोनिया के साथ कभी मत मिलाएँ: गैस।
caution-not-for-drinking = पीना नहीं।
caution-not-until-pumped = पानी निकालने और जाँचने तक मत पिएँ।
caution-rehydrate = ORS घूँट-घूँट दें।
caution-retest-later = रुकने के बाद फिर जाँचें।
caution-stir-tank = टंकी भरते समय दवा डालें या खूब हिलाएँ; रुकने के समय नल बंद रखें।
caution-tablet-too-strong = एक गोली को पानी कम है: ज्यादा पानी लें।
caution-well-clear-first = गंदा कुआँ: पहले पानी निकालें, साफ होने दें।
caution-well-ph = इस pH पर कुएँ में क्लोरीन ठीक काम नहीं करती: जल विभाग से पूछें।
caution-chemicals-stay = रसायन और नमक नहीं निकलते।
caution-cold-takes-longer = ठंडा हो तो ज्यादा रुकें।
caution-cryptosporidium-survives = क्रिप्टोस्पोरिडियम नहीं मरता।
caution-fresh-air = गैस: खुली हवा में जाएँ।
caution-giardia-partly = जियार्डिया बच सकता है।
caution-higher-boil-longer = ऊँची जगह पर: ज्यादा देर उबालें।
caution-iodine-unsuitable = गर्भवती, थायराइड, शिशु, लंबे समय: नहीं।
caution-leptospira-passes = लेप्टोस्पाइरा पार निकल जाता है।
caution-label-first = लेबल पर पीने के पानी की मात्रा लिखी हो तो वही मानें।
caution-no-shorter-wait = रुकने का समय कम मत करें।
caution-medical-help = अभी डॉक्टर को दिखाएँ।
caution-no-vomiting = उल्टी मत कराएँ।
caution-rinse-with-water = पानी से धोएँ।
caution-not-in-rain = बारिश में नहीं।
caution-old-bottle = आपकी बोतल एक साल से पुरानी है: नई लें।
caution-pore-unknown = छेद का नाप पता नहीं: सिर्फ इस पर भरोसा मत करें।
caution-smell-check = रुकने के बाद क्लोरीन की हल्की गंध आए; न आए तो उतनी ही दवा एक बार और डालें, फिर रुकें; फिर भी न आए तो मत पिएँ।
caution-second-method = दूसरा तरीका भी करें।
caution-sewage = मल-नाली: हो सके तो जरूर उबालें।
caution-spores-survive = कुछ कीटाणु उबलने पर भी नहीं मरते, दबाव चाहिए: औजार स्टेराइल करने के लिए नहीं।
caution-strain-first = पहले निथारें और छानें।
caution-print-test = भरी बोतल के आर-पार छपा हुआ पढ़ा जाना चाहिए।
caution-lower-figure = लेबल का छोटा अंक लिया है।
caution-too-murky = आर-पार छपा हुआ न पढ़ सकें तो उबालें।
caution-unscented-only = सिर्फ सादा ब्लीच।
caution-viruses-pass = वायरस पार निकलते हैं: साथ में उबालें या क्लोरीन डालें।
caution-weak-immunity-boil = शिशु या कम इम्यूनिटी: उबालें।
caution-two-days = धूप पक्की नहीं? दोनों दिन रखें।

extra-lower-figure = लेबल का छोटा अंक लिया।
extra-old-bottle = पुरानी बोतल: नई लें।
extra-see-health-worker = बीमार को अभी स्वास्थ्य कार्यकर्ता और ORS चाहिए।

covers = मरते हैं: बैक्टीरिया { $bacteria }, वायरस { $viruses }, जियार्डिया { $giardia }, क्रिप्टोस्पोरिडियम { $cryptosporidium }।
boil-kills-all = उबालने से सब मरते हैं।
cover-yes = हाँ
cover-partly = कुछ
cover-no = नहीं
defer = आपके स्वास्थ्य विभाग के नियम पहले।

## Changed doses

adjusted-faster = { $echo }। सिर्फ तब जब पानी साफ हो, ठंडा न हो: कुल { $measure }, { $wait } रुकें। स्वाद बढ़ेगा, सुरक्षा नहीं।
adjusted-weaker = { $echo }। अगली बार, सिर्फ तब जब पानी साफ हो, ठंडा न हो: { $measure }, { $wait } रुकें। यह पानी: खुला छोड़ें।
cannot-faster = समय कम करना सुरक्षित नहीं। जल्दी चाहिए तो: खूब खौलाएँ, फिर ठंडा करें।
of-solution = इसे कभी मत पिएँ: सिर्फ सफाई के लिए। रोज नया बनाएँ, बंद, नाम लिखकर, बच्चों से दूर रखें। पीने के पानी के लिए लीटर और बोतल का % भेजें।
too-strong = क्लोरीन ज्यादा? कुछ घंटे खुला छोड़ें या साफ बर्तनों में पलटें। रुकने का समय कभी कम मत करें। पी लिया और तबीयत खराब: डॉक्टर को दिखाएँ।
cannot-weaker = यहाँ कम डालना सुरक्षित नहीं। स्वाद के लिए: रुकने के बाद खुला छोड़ें, या साफ बर्तनों में बार-बार पलटें।

## Questions

ask-product = आपके पास क्या है: ब्लीच, क्लोरीन गोली, क्लोरीन पाउडर या आयोडीन?
ask-product-chlorine = कौन सी क्लोरीन है: ब्लीच, कैल्शियम हाइपोक्लोराइट या ब्लीचिंग पाउडर?
ask-product-unfit-for-well = यह कुएँ के लिए नहीं है। क्या आपके पास ब्लीच, कैल्शियम हाइपोक्लोराइट या ब्लीचिंग पाउडर है?
ask-product-unfit-for-cleaning = यह इस काम के लिए नहीं है। क्या आपके पास ब्लीच, क्लोरीन पाउडर या क्लोरीन गोली है?
ask-product-unfit-for-residual = इससे क्लोरीन नहीं बढ़ती। क्या आपके पास ब्लीच, क्लोरीन पाउडर या क्लोरीन गोली है?
ask-product-unfit-for-supply = यह कितना चलेगा, उसके लेबल पर लिखा है। और कौन सी दवा है: ब्लीच, क्लोरीन पाउडर, क्लोरीन गोली या आयोडीन?
ask-product-bleach-tablet = इन गोलियों में क्या है? लेबल पर लिखा mg के साथ भेजें। गोली पीने के पानी के लिए ही बनी होनी चाहिए।
ask-product-chlorine-form = क्लोरीन तरल है, पाउडर है या गोली? लेबल का % या mg भी भेजें।
ask-product-iodine-form = कौन सा आयोडीन है: टिंचर, पोविडोन आयोडीन या गोली?
ask-product-pool = पूल की क्लोरीन में स्टेबलाइजर हो सकता है: पीने के पानी के लिए नहीं। सादा ब्लीच, पीने के पानी की गोली या आयोडीन है? नहीं तो उबालें।
ask-product-powder-form = कौन सा पाउडर: कैल्शियम हाइपोक्लोराइट या ब्लीचिंग पाउडर? लेबल का % भेजें।
ask-product-spoiled = खुशबू वाला, गाढ़ा या रंगीन ब्लीच पीने के पानी के लिए नहीं। सादा ब्लीच, गोली या आयोडीन है? नहीं तो उबालें।
ask-product-tablet-form = गोलियाँ क्लोरीन की हैं या आयोडीन की? पत्ते पर लिखा नाम और mg भेजें।
ask-product-two-products = ये एक से ज्यादा चीजें हैं। कौन सी डालेंगे?

ask-strength = { $product } के लेबल पर कितने % लिखा है?
ask-strength-no-label = % के बिना मात्रा नहीं बता सकते। लेबल वाली दूसरी बोतल मिलेगी? नहीं तो उबालें: खूब खौलाएँ, फिर ठंडा करें। आग भी नहीं हो तो भेजें: लेबल नहीं आग नहीं।
ask-strength-degrees = { $product } के लेबल पर कितने % लिखा है? डिग्री के दो मतलब हो सकते हैं।
ask-strength-denied = तो कितने % है? { $product } का लेबल पढ़कर भेजें।
ask-strength-bound = { $product } के लेबल पर ठीक कितने % है? मात्रा के लिए "से कम" काफी नहीं।
ask-strength-guessed = { $product } का लेबल देखें: कितने % छपा है?
ask-strength-outside = { $product } इतने % में नहीं आता। लेबल पर कितने % छपा है?
ask-strength-is-target = वह पानी के लिए है। { $product } के लेबल पर कितने % छपा है?
ask-strength-is-solution = वह सफाई के घोल का % है। { $product } के लेबल पर कितने % छपा है?
ask-strength-thinned = पानी मिले { $product } का % पता नहीं होता। बंद या बिना मिलाई बोतल के लेबल पर कितने % है? ऐसी बोतल नहीं तो उबालें।
ask-strength-two = दो अलग % हैं। { $product } के लेबल पर कौन सा छपा है?
ask-strength-unreadable = % पढ़ा नहीं गया। फिर से भेजें, जैसे: 3.5%
ask-strength-wide = इतने फर्क से काम नहीं चलेगा। { $product } के लेबल पर ठीक कितने % है?

ask-tablet = एक गोली कितने mg की है? पत्ते या डिब्बे पर लिखा है।
ask-tablet-compound = क्या यह आयोडीन का mg है? गोली पर अक्सर दूसरे रसायन का mg छपा होता है। एक गोली से कितने mg आयोडीन निकलता है?
ask-tablet-two = दो नाप की गोलियाँ हैं। कितने mg वाली डालेंगे?
ask-tablet-outside = पीने के पानी की ऐसी कोई गोली मुझे पता नहीं। पत्ते पर कितने mg छपा है?

ask-volume = कितने लीटर पानी साफ करना है?
ask-volume-uncounted = कुल कितने लीटर पानी है?
ask-volume-unsized = उसमें कितने लीटर आता है? (बाल्टी और डिब्बे अलग-अलग नाप के होते हैं)
ask-volume-outside = यह मात्रा नहीं चलेगी। कितने लीटर पानी साफ करना है?
ask-volume-two = पानी की एक से ज्यादा मात्रा है। एक बार में कितने लीटर साफ करना है?
ask-volume-unreadable = मात्रा पक्की समझ नहीं आई। कितने लीटर पानी? बिना बिंदु के लिखें, जैसे: 1000 L

ask-volume-solution = कितने लीटर घोल बनाना है?
ask-volume-tank = उसमें कितने लीटर पानी है?
ask-jar = हर जार या बाल्टी में कितने लीटर पानी था?

ask-diameter = कुआँ कितने मीटर चौड़ा है?
ask-diameter-outside = यह चौड़ाई नहीं चलेगी। कुआँ कितने मीटर चौड़ा है?
ask-depth = कुएँ में पानी कितने मीटर गहरा है? रस्सी से पत्थर लटकाएँ और गीला हिस्सा नापें।
ask-well-depth-only = वह कुएँ की गहराई है। उसमें पानी कितने मीटर गहरा है? रस्सी से पत्थर लटकाएँ और गीला हिस्सा नापें।
ask-water-depth-outside = यह गहराई नहीं चलेगी। कुएँ में कितने मीटर पानी है?
ask-target = घोल कितने % चाहिए? हाथ { $hands }%, फर्श { $floors }%, खून { $blood }%, हैजे की उल्टी या दस्त { $stools }%। स्वास्थ्य विभाग अलग कहे तो वही मानें।
ask-target-outside = यह % नहीं चलेगा। घोल कितने % चाहिए? हाथ { $hands }%, फर्श { $floors }%, खून { $blood }%।
ask-target-too-strong = आपका { $product } उससे हल्का है। घोल कितने % चाहिए? हाथ { $hands }%, फर्श { $floors }%, खून { $blood }%।
ask-residual = टेस्ट में कितना आया, mg/L (या ppm) में?
ask-people = कितने लोगों के लिए?
ask-people-outside = यह गिनती नहीं चलेगी। कितने लोगों के लिए?
ask-days = कितने दिन के लिए? (या बताएँ आपके पास कितना है।)
ask-days-outside = यह नहीं चलेगा। कितने दिन के लिए?
ask-stock-liquid = आपके पास { $product } कितने लीटर है? या: कितने लोग और कितने दिन के लिए?
ask-stock-powder = आपके पास { $product } कितने किलो या ग्राम है? या: कितने लोग और कितने दिन के लिए?
ask-stock-tablets = आपके पास कितनी गोलियाँ हैं? या: कितने लोग और कितने दिन के लिए?
ask-stock-outside = यह मात्रा नहीं चलेगी। आपके पास { $product } कितना है?

last-resort = आखिरी उपाय, % पता नहीं: हर लीटर में { $drops }, { $wait } रुकें। क्लोरीन की हल्की गंध आए; न आए तो एक बार और डालें, फिर रुकें; फिर भी न आए तो मत पिएँ।
last-resort-total = आखिरी उपाय, % पता नहीं: कुल { $total } (हर लीटर में { $drops }), { $wait } रुकें। क्लोरीन की गंध आए; न आए तो एक बार और डालें, रुकें; फिर भी न आए तो मत पिएँ।

## No dose

refused-chemical = कोई मात्रा नहीं, मत पिएँ: क्लोरीन, आयोडीन, उबालने या फिल्टर से तेल-डीजल-पेट्रोल, कीटनाशक, कारखाने का कचरा या नमक नहीं निकलता। दूसरा पानी ढूँढें, स्वास्थ्य विभाग को बताएँ।
refused-iodine_unsuitable = आयोडीन नहीं: गर्भवती, थायराइड रोगी, शिशु को नहीं, कुछ हफ्तों से ज्यादा नहीं। इसकी जगह उबालें, या सादा ब्लीच लें: उसका % और लीटर भेजें।
refused-mixed = खतरा: ब्लीच कभी तेजाब, सिरका, अमोनिया या क्लीनर में मत मिलाएँ: जहरीली गैस। खिड़की-दरवाजे खोलें, खुली हवा में जाएँ। सिर्फ सादा ब्लीच और पानी लें।
refused-other_use = यहाँ सिर्फ पीने के पानी और सफाई के जवाब मिलते हैं। घाव, आँख, डायलिसिस, मछली, पूल, कपड़े या खाने के लिए स्वास्थ्य कार्यकर्ता से पूछें।
refused-over_limit = दवा दोगुनी से ज्यादा डली हो तो पानी पीना सुरक्षित नहीं।

## Somebody hurt or ill

first-aid = अभी डॉक्टर को दिखाएँ। निगला: उल्टी मत कराएँ, कुल्ला कराएँ, होश में हो तो घूँट-घूँट पानी। आँख, त्वचा: { $rinse } पानी से धोएँ। गैस: खुली हवा।
first-aid-powder = अभी डॉक्टर को दिखाएँ। निगला: उल्टी मत कराएँ, कुल्ला कराएँ, होश में हो तो घूँट-घूँट पानी। त्वचा: पहले झाड़ें। आँख, त्वचा: { $rinse } पानी से धोएँ। गैस: खुली हवा।
# Before first aid, where the deployment names a number to call.
help-line = फोन { $number }।
first-aid-then = फिर दोबारा पूछें।
unsure = निगला या छींटा पड़ा? तो पानी से धोएँ, उल्टी मत कराएँ, डॉक्टर को दिखाएँ। सिर्फ मात्रा पूछनी हो तो बस दवा, % और लीटर भेजें।
illness = ORS घूँट-घूँट दें, माँ का दूध देते रहें। खून, धँसी आँखें, पेशाब नहीं, बहुत कमजोर, या पी न सके: अभी अस्पताल ले जाएँ। यहाँ बीमारी की जाँच नहीं हो सकती।
illness-danger = अभी अस्पताल ले जाएँ। बेहोश हो या निगल न सके: मुँह से कुछ मत दें। होश में: रास्ते में ORS घूँट-घूँट दें, माँ का दूध देते रहें। यहाँ बीमारी की जाँच नहीं हो सकती।
illness-feeding = ORS पैकेट पर लिखे तरीके से, उबले या क्लोरीन डले पानी में घोलें। खाना देते रहें।
illness-water = पीने का सारा पानी अभी उबालें या उसमें क्लोरीन डालें, साबुन से हाथ धोएँ, एक से ज्यादा बीमार हों तो स्वास्थ्य विभाग को बताएँ।

## Service

kept = याद रखा: { $product }{ $label }। अब बस लीटर भेजें।
kept-part = याद रखा: { $product }। लेबल पर कितने % या mg है? भेजें: याद रखो { $product } ...
kept-figure = याद रखा:{ $label }। कौन सी दवा है?
not-kept = याद नहीं रखा: दवा और उसका % पक्का नहीं है। ऐसे भेजें: याद रखो ब्लीच 5%
kept-opened = { $date } को खोली।
kept-future = { $date } अभी आई नहीं। कब खोली थी? ऐसे भेजें: 1 मार्च 2026 को खोली
bottle = { $bottle }।
bottles = मुझे याद है: { $list }
bottles-none = आपकी कोई बोतल याद नहीं। ऐसे भेजें: याद रखो ब्लीच 5%, 1 लीटर
left = बचा: { $amount }, { $litres } पानी के लिए।
left-amount = बचा: { $amount }।
left-days = इसी चाल से { $days } चलेगा: अभी और ले लें।
left-short = मेरे हिसाब से आपकी बोतल में सिर्फ { $amount } बचा है।
left-empty = मेरे हिसाब से अब खाली है: और ले लें।
age-soon = जल्दी काम में लें: { $months } महीने टिकता है।
age-now = { $months } महीने से पुराना है: नया लें।
age-estimate = अंदाजा: { $celsius } C पर रखा हो तो करीब { $percent }% ताकत बची है। मात्रा इस हिसाब से नहीं है: गंध जाँचें।
undone = गिना नहीं। { $left }
nothing-to-undo = आज आपकी कोई मात्रा नहीं गिनी।
will-remind = { $wait } बाद संदेश आएगा।
nothing-to-wait-for = याद दिलाने को कोई समय नहीं है। पहले मात्रा पूछें।
reminder-chlorine = { $wait } हो गए। पानी गंदा या ठंडा था? तो और रुकें। सूँघें: क्लोरीन की हल्की गंध हो तो तैयार। गंध नहीं: उतनी ही दवा एक बार और डालें, फिर रुकें।
reminder-disinfectant = { $wait } हो गए: पी सकते हैं। पानी गंदा या ठंडा था तो और रुकें।
reminder-retest = { $wait } हो गए: किसी के पीने से पहले क्लोरीन फिर जाँचें।
reminder-sun = { $wait } हो गए। तेज धूप थी तो पी सकते हैं; नहीं थी तो और रखें।
reminder-surface = { $wait } हो गए: जगह को पानी से धोएँ।
reminder-well = { $wait } हो गए: कुएँ का पानी निकालें, फिर जाँचें। उससे पहले कोई न पिए।
seen = आपका दूसरा सवाल ({ $topic }): अलग से भेजें।
topic-boil = उबालना
topic-dose = मात्रा
topic-dilute = सफाई
topic-storage = पानी रखना
topic-well = कुआँ
topic-why = क्यों
set-language = भाषा बदली: { $language }।
set-language-unknown = { $language } अभी नहीं आती। हिंदी में ही जवाब मिलेंगे।
set-units-metric = नाप: लीटर और ml।
set-units-us = नाप: US गैलन।
set-units-imperial = नाप: UK गैलन।
help = दवा, लेबल का % और लीटर भेजें। जैसे: 20 लीटर गंदा, ब्लीच 5%। यह भी पूछें: उबालना, कुआँ, सफाई, क्लोरीन टेस्ट, स्टॉक, पानी रखना, "और", "क्यों", "बंद", "भूल जाओ"।
greeting = matone बताता है पानी पीने लायक कैसे करें। दवा, % और लीटर भेजें, जैसे: 20 लीटर गंदा, ब्लीच 5%। या "मदद"।
stopped = बंद: अब बिना पूछे कोई संदेश नहीं आएगा। सवालों के जवाब मिलते रहेंगे। फिर चालू करने को "शुरू" भेजें।
started = संदेश चालू हैं। दवा, % और लीटर भेजें, जैसे: 20 लीटर गंदा, ब्लीच 5%। या "मदद"।
dropped = अब याद नहीं: आपकी दवा, { $product }।
forgotten = आपका रखा हुआ सब कुछ मिटा दिया।
not-understood = समझ नहीं आया। दवा, % और लीटर भेजें, जैसे: 20 लीटर गंदा, ब्लीच 5%। या "मदद"।
nothing-before = पहले मात्रा पूछें। दवा, % और लीटर भेजें, जैसे: 20 लीटर गंदा, ब्लीच 5%।
nothing-more = बस इतना ही। "क्यों" भेजें तो स्रोत मिलेंगे।
why = { $dose }{ $wait }{ $logs } स्रोत: { $sources }।
why-dose = पानी में { $mg } mg/L आता है।
why-wait-rule = { " " }समय: छपा हुआ नियम।
why-wait-unknown = { " " }समय: छपा हुआ नियम, पानी कितना ठंडा है पता नहीं।
why-wait-cold = { " " }समय: ठंडे पानी के लिए ज्यादा।
why-wait-ct = { " " }समय: संपर्क समय { $reached }, जरूरी { $needed } mg.min/L, { $residual } mg/L मानकर।
why-logs = { " " }{ $celsius } C और pH { $ph } पर, { $residual } mg/L मानकर: संपर्क समय { $reached }, जरूरी { $needed } mg.min/L; वायरस { $viruses } log, जियार्डिया { $giardia } log, क्रिप्टोस्पोरिडियम कुछ नहीं।
why-boil = कुछ संस्थाएँ ज्यादा देर उबालना सिर्फ ऊँची जगह पर माँगती हैं, विश्व संस्था सिर्फ खूब खौलाना: यहाँ ज्यादा कड़ा नियम है।
source-published = { $title } ({ $publisher }, { $year })
source-undated = { $title } ({ $publisher })
source-memory = { $title } ({ $publisher }; याद से)
source-common = आम चलन, कोई स्रोत नहीं

## The printed chart: read from a wall, so no message of it has to fit an SMS

chart-title = पानी पीने लायक करने के लिए कितना ब्लीच डालें
chart-caption = सादा तरल ब्लीच इतना डालें। % वही हो जो आपकी बोतल पर लिखा है।
chart-water = पानी
chart-bottle = ब्लीच { $percent }%
chart-clear = साफ
chart-cloudy-or-cold = गंदा या ठंडा
chart-imperial-quarts = { $value } UK क्वार्ट
chart-teaspoons = { $spoons } चाय चम्मच
chart-tablespoons = { $spoons } बड़ा चम्मच
chart-or = या { $way }
chart-then-wait = फिर रुकें
chart-wait-if-cold = ठंडा: { $wait }
chart-legend = सिर्फ एक तरह से नापें: बूँद, ml या चम्मच। चाय चम्मच (छोटा) और बड़ा चम्मच: ऊपर से बराबर करके। ठंडा: हाथ को ठंडा लगे।

chart-step-add = तालिका में अपना पानी देखें। उतना ब्लीच डालें और हिलाएँ।
chart-step-wait = आखिरी पंक्ति में लिखे समय तक रुकें। उससे पहले कोई न पिए।
chart-survive = ब्लीच से नहीं मरते: { $list }।
chart-may-survive = बच सकते हैं: { $list }।

chart-caution-chemicals-stay = ब्लीच से तेल, डीजल, पेट्रोल, कीटनाशक, कारखाने का कचरा या नमक नहीं निकलता: दूसरा पानी ढूँढें।
chart-caution-keep-from-children = ब्लीच बच्चों से दूर रखें।
chart-caution-label-first = बोतल पर पीने के पानी की विधि लिखी हो तो वही मानें।
chart-caution-never-mix = तेज़ाब या अमोनिया के साथ कभी मत मिलाएँ: गैस बनती है।
chart-caution-old-bottle = एक साल से कम पुरानी बोतल ही लें।
chart-caution-smell-check = सूँघें। क्लोरीन की हल्की गंध आनी चाहिए। न आए तो उतना ही एक बार और डालें और फिर रुकें। फिर भी न आए तो मत पिएँ।
chart-caution-strain-first = गंदा पानी: मिट्टी नीचे बैठने दें, फिर साफ कपड़े से छानें।
chart-caution-too-murky = पानी इतना गंदा कि आर-पार छपा हुआ न पढ़ सकें: ब्लीच मत डालें, उबालें।
chart-caution-unscented-only = सिर्फ सादा ब्लीच: खुशबू नहीं, रंग नहीं, गाढ़ा नहीं, दूसरा क्लीनर मिला नहीं।
chart-caution-weak-immunity-boil = शिशु और कम इम्यूनिटी वाले लोगों के लिए: इसकी जगह पानी उबालें।

chart-sources = स्रोत: { $sources }।
chart-printed = छपा { $year }-{ $month }-{ $day }।

## Terminal and command line

terminal-greeting = matone: पास के पानी को पीने लायक कैसे करें। पहले अपने स्वास्थ्य विभाग की मानें।
terminal-examples = लिखकर देखें:  2 गैलन गंदा पानी 1% ब्लीच  |  2400 मीटर पर कितनी देर उबालें  |  याद रखो ब्लीच 5%
terminal-bye = स्वस्थ रहें।
