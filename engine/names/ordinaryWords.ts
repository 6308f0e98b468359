import { folded } from './folding.ts';

/**
 * Words of everyday texts, and of notes on lifting, that are names too, in any case or form in which a note may have them. A
 * name that is one of them is never hidden without asking: "Mark the floor" would lose its verb.
 */
const english = `
able ace aim alley alma amber amity angel anger apple april arch archer arm art ash aspen august aurora autumn axel back bailey baker ball band
bank banks bar barb bark barn barr baron bass bay bean bear beck belle bell bench bend berry best beth bill bird bishop black blade blaze bliss block
bloom blue bob bond booker boot bow bowl box boy brace brad branch brand bravo bray bridge bright brook brooks brown buck bud buddy burn burns bush butcher
butler butt buzz cable cage cal can candy care carol carry carter case cash castle cat chad chair chance chap charity chase chat cherry chest chin chip chips
christian chuck church clay cliff close clove clover coach coal cob cole colt cook cooper cope core corn court cove crane crisp cross crow crystal
cue curl cursor cutter cyan dag daisy dale dan dane dash date dawn day deacon dean deep dell dell derby desire dew dewy dick dill dip dirk dixie dolly don
door dot dove dow drake dream drew drive drop duke dusty dutch dyer each eager eagle earl ease east easton easy eaton ebony eden edge ember emerald
ever fair faith fall fan farmer fast favor faye fern field fields finch finn fish fisher fit flint flood flora flow floor fly foot ford forest fort fortune foster fowler
fox frank franklin free freed freedom french friday frost full gain gale game garden gard gate gates gay gem gene genesis gill ginger glad glass glen glory
gold good goody grace grand grant gray great green grey griffin grip grove guard guy hail hale hall ham hand hank hardy harmony harper
hart harvest haven hawk hay hazel head heal heath heather heaven heel held hep herb hero hey high hill hinge hip hold holly honest honey honor hood hook hope horn
house hugh hugo hung hunt hunter hut ida ink iris iron ivory ivy jack jade jay jasmine jean jeans jet jewel jo job jolly jordan joy judge july june junior just justice
justin keen kelly ken kent key kick kid kidd kin king kings kit kite knee knight knox lace lad lake lamb lance land lane lark laurel law lawn lawson lax lay leaf lean leap leave lee legend
let level liberty lien lift light like lilac lily lime line link lion little lock loft log long loop lord lot lotus louis love low luck lucky luke lunge luz lynch lynx
mace mad madge magic magnolia main major mallet man mane many march marina marine mark marks marsh martin mason mat mate matt max may me mead meadow mean melody mercy merit merry
mile miles mill miller min mind mine mint miss misty mo monday moon moor more morn most muse myrtle nan nance nancy near neck nell never new newton next nice nick noble noel nook
north nova now oak ocean octavia off olive on one opal open orchid otter oven own page paige palm pan pansy park parker parry part pat patience patsy paul pause peace
peach pearl peck peg pen penny pepper percy perch perry pet petal piece pier pierce pike pin pip piper pippa plane plank plant plate plato poe pole polly pond poppy port porter post pot potter pound
powers press price pride prince princess prose prudence pull pup pure push queen quick quest quill rack rad rae rain raise rally ram ramp ran range ranger rap raven ray read reason red reece reed reef rest rex rhyme rich
rider ridge right ring rip ripley rise rising river rivers road rob robe rock rocky rod roger roll roman ron roof rook room root rope rory rose rosy round rove row rowan rowe royal ruby rue run rush russet
rusty ruth rye sable sage sailor saint sal sale sally salt sam sand sands sandy sap sash saturday say scarlet scout seal season see self sense serene set shade shaft shan shaw she shell sheriff shine shore short show sid
side sienna silk silver simple sinclair single sir sit skip sky slack slate slim sloan slow small smart smith snow so sol some son song soon south spark sparrow speed spence spike spring spruce squat stag stan stance stand star
stark steel stein step sterling stern stew still stock stone storm story street stretch strong sue sugar summer sun sunday sung sunny sure surge swan sweet swift tab tad tall tally tan tang tap tate taylor
teal ted tempo temple tempest term terrace terry than the then thorn thrift tia tiger tim timber tin tip toby tod today tom ton toner tony top torn tower town tracks tracy trent trey trinity trip troy true trust truth tuck
tucker tulip turn turner twist tyke unity urban vale valley valor van vance vera verity vic victor victory violet viola virtue vista wade walk walker wall wally walter wang ward ware warner warren
water watt way weaver web webb weight weights well wells west wet wheeler whistle white wide wild wilder will wills willow win wind windy wing winner winter wise wit wolf won wood woods woody work worth
wrap wren wright yard yes yong york young your yule zeal zen zest
`;

const german = `
aal abend abt acht adel adler ahorn alle allein also alt altmann als am an anger anker arm arzt aue auf aus axt bach back bald ball band bank bar bauch bauer baum bein berg bergen bernstein bert besen besser bin
birke bis biss blatt blau blei blick blum blume bock boden bogen bohne bolz borg braun breit brett brink bruch brunnen brust buch buche bund burg busch butter christ clever dach
damm dank das decker degen dein demut denk der dick die dietrich doll dorf dorn drei duft ehe ehre ehrlich eiche eigen einer eisen elf ende engel
ente erde erika erle ernst erst es esche esser ewig falk falke fall fass faust feder feind feld fels fest feuer fichte fink finke fisch fischer flach fleck fleiss flieder
flora florian folk frank franz frau frei freitag freude freund friede frisch froh from fromm frost fuchs fuhr fuss gabe gabel gans ganz gast geist gelb gerade gerber gern gerste glanz glas glatt glaube glaser
gold golz gott graf grimm gross grosse grube grund gruen grun gut haar hafer hagel hahn halm hals halt hammer hand handel hang hansel hart hase haupt haus heck heft heide heil heiland heim heine heiss held helm heller hell
herbst herr herz heu heuer hilfe himmel hinz hirsch hirte hoch hof hoffnung hold holt holz honig horn huber hut igel ilse immer insel iris jahn jahr jan januar jasmin jung junge junker jens juli juni kahl
kai kaiser kalb kalt kamm kanne kante kanter kappe karg karl karo katze kauf kegel keil keller kern kette kiefer kind kirsch klar klara klee klein kling klinge klotz klug knabe knapp knie knoll koch kohl kohle konig koenig kopf korb korn krach kraft
krahe kramer kranich kranz kraus krause krebs kreis kreuz krieg krieger krone krug kruger krumm kuhn kummer kunst kunz kunze kurz lahm lamm land lang lange langer laub lauf lauter leben leer lehmann lehn leicht lein leise
lena lenz lerche letzt leu leuchte licht lieb liebe lieber lilie linde linden link linke links lob loch locke lohn lorbeer los lose luft lustig macht mai maier mal mandel mangel mann mark marke marder markt marz maul maurer maus max meer meier
mein meise meister mensch metz metzger milch mild mina minne mit mitte mohn mohr moll mond montag moor moos morgen moritz mull muller munter musik mut nacht nagel nah nase natter nebel nelke nest
neu neumann neun nichts nolte nord not nun nuss oben ober obst ohm ohr oktober orden ort ost ostern otter palm panzer papst pass pause pech pein pelz peter pfad pfaff pfeffer pfeifer pfeil pferd pfister pflug pilz platz pohl preis
probst punkt rabe rad rain ranft rank rapp rast rat raub rauch raum rebe recht rechts reh reich reif reifen rein reinhold reis reise reiter rest ribbe richter riegel ring ritter rohr rolf roland rose rosen
ross rot roth ruck ruhe rund runde sach sachs sack saft sage salz sand sander sanft satt sattel satz sauer schach schade schaf schafer schaefer schatz schauer schein scherz schilling schimmel schirm schlag schlank schlegel schlicht schloss
schmal schmidt schmied schmitz schnabel schnee schneider schnell schnitt schon schoen scholz schott schramm schreiber schreiner schritt schuh schulte schultz schulz schuster schutz schwab schwan schwarz schwer see seele seide seiler seite selig senf siebert sieg siegel
silber sinn so sohn sold sommer sonne sonntag span spann sparen specht sperber sperling spiegel spiel spitz stahl stamm stand stange stark staub steffen steg steif steiger stein stelle stern steuer stich
stier still stock stoll storch stolz stoss strahl strand strass strauch strauss streng strich strick stroh strom stube stumpf sturm sues sund suss tag tanne tanz tau taube tausend teich teller
teufel thorn tief tier tisch tor tod toll ton topf traub traum treu trost tuch ulme unger unruh unten unter urban ute vater veit venus vetter viel vier viola vogel vogt voll
von vorn wach wachs wachter waechter wagen wagner wahl wahr wald walter wand wanner warm warner warte wasser weber weg wegener weich weide weigel weil wein weise weiss weit welle welt wende wenig wenn wer werk werner west wetter
weyer wiese wild will wille willig wind winde winkel winkler winter wir wirt witt witz wo wohl wolf wolff wolke wolle wort wulf wunder wunsch wurm zahn zander zange zart zaun zeit zeller zelt ziegel ziegler ziel zimmer zimmermann zink zorn zufall zug zwei
zweig zwick
`;

/** Names of other languages that are everyday words there, or in English or German. */
const others = `
alba alma amor angel arena aura azul bel blanca blanche bruno can ceren cielo clara claro claire cruz deniz dolores dong duc ece ege ekin elan esperanza estrella evren felix fleur gloria grazia gul ha hao hai hoa hung ilkin
kaya kim lan leon linh lune luna luz man mar mare marina min ming miel mila mina mond montana net oya ozan paz perla pierre pilar quan reina reine rey rosa rosario ruda santa selva serena silva sol sole stella su sung
tan tang tin tien umut ural vera verda vida viola viva yaman yang yen ying yildiz yong
вера любовь надежда лев роман слава мир света роза лилия марина гора мороз зима белов волк заяц орел сокол мельник коваль
ελπιδα ειρηνη σοφια χαρα ροδη αστερι λαμπρος
علي على نور امل سعيد كريم جميل جميله صالح حسن حسين كامل عادل سالم هادي هدي امين ناصر وفاء سلام حياه رحمه قمر شمس نجم ربيع وليد رامي راشد خالد فارس بدر زين عمر سلمي مني هناء صفاء
אור טל גל ים חן נעם נועם שיר שיר רון גיל דן לב עדן אביב שקד אלון ורד רז חיים שלום מאור ליאור
आशा राम ज्योति किरण कमल सुमन प्रेम शांति आनंद विजय अमर दीप सागर सूरज चांद राज जय मोहन सुंदर
하늘 사랑 나라 보라 바다 아름 우리 누리 가을 여름 겨울 새봄 이슬 한솔 소리 기쁨 은혜 지혜 평화 소망 대로 정도 가지 다리 고운
光 森 林 原 東 南 西 北 空 海 翼 愛 望 瞳 歩 心 力 岩 泉 橋 山 川 田 高 明 さくら そら うみ あい のぞみ ひとみ あゆみ こころ ひかり ゆき はる なつ あき ふゆ かおり みき まこと すすむ ひろ しん じゅん はな もも りん
高兴 光明 文明 平安 海洋 大海 美丽 建设 国家 和平 自然 小心 明明 红 白 黄 江 河 马 牛 金 石 方 平
ฟ้า น้ำ ดาว แก้ว ใหม่ เล็ก ใหญ่ ดี ใจ แดง ขาว ดำ เขียว ปลา นก หมู ไก่ แมว กุ้ง ฝน ลม ไฟ ดิน ทอง เงิน เพชร พลอย แสง เดือน ตะวัน สาย ต้น ใบ ดอก ก้อย อ้อย น้อย หนู หนึ่ง สอง หน่อย ขวัญ บุญ
`;

const words: ReadonlySet<string> = new Set(
  `${english} ${german} ${others}`
    .split(/\s+/u)
    .filter((word) => word !== '')
    .map(folded),
);

/** Whether a folded form is also an ordinary word. */
export const isOrdinary = (form: string): boolean => words.has(form);
