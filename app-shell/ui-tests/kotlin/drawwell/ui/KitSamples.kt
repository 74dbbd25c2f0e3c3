package drawwell.ui

import drawwell.surface.Action
import drawwell.surface.Appearance
import drawwell.surface.CheckScreen
import drawwell.surface.ChoiceRow
import drawwell.surface.DialArc
import drawwell.surface.DialHand
import drawwell.surface.DialPicture
import drawwell.surface.Event
import drawwell.surface.FieldKind
import drawwell.surface.FieldRow
import drawwell.surface.FindingsScreen
import drawwell.surface.Frame
import drawwell.surface.Hand
import drawwell.surface.ListGroup
import drawwell.surface.ListRow
import drawwell.surface.Notice
import drawwell.surface.Palette
import drawwell.surface.Part
import drawwell.surface.Phase
import drawwell.surface.Place
import drawwell.surface.PlotBand
import drawwell.surface.PlotColumn
import drawwell.surface.PlotCourse
import drawwell.surface.PlotPicture
import drawwell.surface.PlotPoint
import drawwell.surface.PlotStretch
import drawwell.surface.RibbonPoint
import drawwell.surface.Screen
import drawwell.surface.Section
import drawwell.surface.Sign
import drawwell.surface.Tick
import drawwell.surface.Tone
import drawwell.surface.Weight
import kotlin.math.PI
import kotlin.math.exp
import kotlin.math.sin

/** Kit's screens with everything on them that can be there at once, which no one record would show. Made by hand. */
object KitSamples {
    fun pump(hand: Hand = Hand.RIGHT) = Screen.Findings(frame("Pump", "Double electric, both sides at once", hand), pumpFindings())

    fun trace(hand: Hand = Hand.RIGHT) = Screen.Findings(frame("Trace", "12 March, left side", hand), traceFindings())

    fun check(hand: Hand = Hand.RIGHT) = Screen.Check(frame("Check", "Double electric, at its highest level", hand), check)

    fun act(key: String, label: String, weight: Weight = Weight.PLAIN, sign: Sign = Sign.NONE, detail: String = "", chosen: Boolean = false) =
        Action(key, label, detail, "$label, spoken", Event.Enter("sample", key, label), weight, sign, chosen, true)

    private fun frame(title: String, subtitle: String, hand: Hand) = Frame(
        title, subtitle,
        listOf("Now" to Sign.NOW, "Tonight" to Sign.TONIGHT, "Supply" to Sign.SUPPLY, "Kit" to Sign.KIT, "Visit" to Sign.VISIT).map { (word, sign) ->
            act("place-${word.lowercase()}", word, Weight.PLAIN, sign, chosen = word == "Kit")
        },
        act("back", "Kit", Weight.QUIET, Sign.BACK), act("undo", "Undo", Weight.QUIET, Sign.UNDO), null, emptyList(),
        Appearance(hand, Palette.LIGHT), false, emptyList(), null,
    )

    val dial = DialPicture(
        listOf(DialArc(0.625f, 0.75f, "The maker's range: 250 to 300 mmHg")),
        listOf(DialHand(0.63f, 0.655f, 0.68f, "L"), DialHand(0.615f, 0.64f, 0.665f, "R")),
        ticks(0f, 0.125f, 0.25f, 0.375f, 0.5f, 0.625f, 0.75f, 0.875f, 1f) { "${(it * 400).toInt()}" },
        "262", "mmHg",
        "A line is the mean of the readings of a side, its wedge where the true pull lies with this gauge.",
        "Dial from 0 to 400 mmHg. Left 262, between 252 and 272. Right 256, between 246 and 266.",
    )

    private val wear = PlotPicture(
        listOf(PlotBand(0.5f, 0.75f, "The maker's range: 250 to 300 mmHg")),
        emptyList(), emptyList(),
        listOf(
            PlotCourse(course(0.04f, 0.7f) { 0.69f - 0.16f * it to 0.04f }, false),
            PlotCourse(course(0.7f, 1f) { 0.69f - 0.16f * it to 0.04f + 0.25f * (it - 0.7f) }, true),
        ),
        listOf(0.04f to 0.68f, 0.21f to 0.66f, 0.38f to 0.6f, 0.53f to 0.655f, 0.7f to 0.57f).flatMap { (at, height) ->
            listOf(
                PlotPoint(at, height - 0.05f, height, height + 0.05f, Part.LEFT, false),
                PlotPoint(at, height - 0.075f, height - 0.025f, height + 0.025f, Part.RIGHT, false),
            )
        },
        listOf(Tick(0.42f, "New valves"), Tick(0.5f, "New membranes, left"), Tick(0.66f, "Battery")),
        listOf(Tick(0.04f, "Jan"), Tick(0.21f, "Feb"), Tick(0.38f, "Mar"), Tick(0.53f, "Apr"), Tick(0.7f, "May"), Tick(0.86f, "Jun"), Tick(1f, "Jul")),
        listOf(Tick(0f, "150"), Tick(0.25f, "200"), Tick(0.5f, "250"), Tick(0.75f, "300"), Tick(1f, "350")),
        "A round sign is the left side, a square one the right, with the gauge's error. Dashed: where it goes if it goes on so.",
        "Five checks since January. The pull falls by about 6 mmHg a month.",
    )

    private val levels = PlotPicture(
        emptyList(), emptyList(), emptyList(),
        listOf(PlotCourse(course(0.06f, 0.94f) { 0.16f + 0.72f * (1 - exp(-2.4f * it)) / (1 - exp(-2.4f)) to 0.05f }, false)),
        (0..8).map { level ->
            val at = 0.06f + level * 0.11f
            val middle = 0.16f + 0.72f * (1 - exp(-2.4f * at)) / (1 - exp(-2.4f))
            PlotPoint(at, middle - 0.06f, middle, middle + 0.06f, null, level % 2 == 1)
        },
        emptyList(),
        (0..8).map { Tick(0.06f + it * 0.11f, "${it + 1}") },
        listOf(Tick(0f, "0"), Tick(0.25f, "100"), Tick(0.5f, "200"), Tick(0.75f, "300")),
        "An open sign was not read: it lies between two that were.",
        "Levels 1 to 9, from 70 to 262 mmHg.",
    )

    private fun pumpFindings() = FindingsScreen(
        "Meets the maker's range", "about 262 mmHg", "252 to 272 with this gauge, from 6 readings on 4 May", dial,
        listOf("The right side pulls 6 mmHg less than the left: within the gauge's error.", "With this gauge it is right 97 times in 100."),
        listOf(ask("ask-unit", "Were these figures in kPa?", "In kPa", "As they are")),
        listOf(act("check", "Check with a gauge", Weight.MAIN, Sign.START), act("trace", "Write down a trace", sign = Sign.ADD), act("edit", "Change what it is")),
        listOf(
            Section("wear", "Wear", listOf("About 6 mmHg less a month, between 2 and 10. It would leave the range between August and next March."), wear, emptyList(), listOf(row("Check of 4 May", "Left 262, right 256 mmHg"), row("New membranes, left", "The drop went with the old ones")), listOf(act("add-part", "New part", sign = Sign.ADD)), null),
            Section("levels", "What a level means", listOf("Sessions since 4 May show this beside their levels."), levels, emptyList(), emptyList(), emptyList(), null),
            Section("rests", "What it rests on", emptyList(), null, listOf(field("gauge", "Gauge", "250"), field("hours", "Hours run", "")), emptyList(), emptyList(), null),
        ),
        "Meets the maker's range. About 262 mmHg.",
    )

    private fun traceFindings() = FindingsScreen(
        "Pulls steadily", "54 a minute", "248 mmHg at its highest, over 118 cycles", null,
        listOf("Two cycles in a hundred were weak.", "Some of it was lost: 4 s at 1 min 20 s."), emptyList(),
        listOf(act("pick", "Take another file", sign = Sign.IN)),
        listOf(
            Section("whole", "The whole of it", emptyList(), wholeTrace(), emptyList(), emptyList(), emptyList(), null),
            Section("cycle", "Some cycles", emptyList(), someCycles(), emptyList(), emptyList(), emptyList(), null),
        ),
        "Pulls steadily, 54 cycles a minute.",
    )

    private fun wholeTrace() = PlotPicture(
        listOf(PlotBand(0.68f, 0.82f, "The maker's highest vacuum: 220 to 270 mmHg")),
        listOf(PlotStretch(0f, 0.3f, Phase.LETDOWN, "Letdown"), PlotStretch(0.3f, 0.9f, Phase.EXPRESSION, "Expression"), PlotStretch(0.9f, 1f, Phase.REST, "Rest")),
        (0..300).map { it / 300f }.filter { it !in 0.55f..0.6f }.map { at ->
            val high = if (at < 0.3f) 0.42f + 0.03f * sin(40 * at) else if (at < 0.9f) 0.74f + 0.03f * sin(60 * at) else 0.05f
            PlotColumn(at, if (at < 0.9f) 0.06f + 0.02f * sin(90 * at) else 0.02f, high)
        },
        emptyList(), emptyList(), listOf(Tick(0.3f, "Switched")),
        ticks(0f, 0.25f, 0.5f, 0.75f, 1f) { "${(it * 4).toInt()} min" }, listOf(Tick(0f, "0"), Tick(0.3f, "100"), Tick(0.6f, "200"), Tick(0.9f, "300")),
        "Between the lowest and the highest vacuum of each moment.", "Letdown for 70 seconds, then expression.",
    )

    private fun someCycles() = PlotPicture(
        emptyList(), emptyList(),
        (0..240).map { it / 240f }.map { at -> (0.45f + 0.38f * sin((at * 8 * PI).toFloat())).let { PlotColumn(at, it - 0.01f, it + 0.01f) } },
        emptyList(), emptyList(), emptyList(), ticks(0f, 0.5f, 1f) { "${(it * 4).toInt()} s" }, listOf(Tick(0f, "0"), Tick(0.6f, "200")), "", "Four cycles in four seconds.",
    )

    private val check = CheckScreen(
        "Left, reading 3 of 3",
        listOf("Close the left flange with the gauge.", "Set the highest level and wait until the needle comes back to the same place.", "Read it, and write down what it shows."),
        field("reading", "What the gauge shows", ""),
        "Near the last one",
        listOf("258", "260", "262", "264", "266").map { act("near-$it", it) },
        dial.copy(hands = dial.hands.take(1)),
        listOf(ask("ask-apart", "This reading is 60 mmHg from the one before. Was it read right?", "It is right", "Take it out")),
        listOf(
            ChoiceRow("side", "Side", listOf(act("side-left", "Left", chosen = true), act("side-right", "Right"), act("side-both", "Both at once"))),
            ChoiceRow("level", "Level", listOf("1", "3", "5", "7", "9").map { act("level-$it", it, chosen = it == "9") }),
        ),
        ListGroup("readings", "Read so far", listOf(row("262 mmHg", "Left, level 9"), row("264 mmHg", "Left, level 9, the first")), "Nothing yet.", emptyList()),
        listOf(choice("gauge", "Gauge", "Needle, class 1.6", "Digital"), choice("power", "Power", "Mains", "Battery")),
        act("done", "What it says", Weight.MAIN), "Left, reading 3 of 3.",
    )

    private fun ask(key: String, text: String, vararg answers: String) =
        Notice(key, Tone.ASKS, text, "$text, spoken", answers.mapIndexed { place, it -> act("$key-$place", it, Weight.QUIET) })

    private fun row(title: String, detail: String) = ListRow(title, detail, "", "$title, $detail", act("open-$title", title))

    private fun field(name: String, label: String, value: String) = FieldRow(
        "sample", name, label, FieldKind.NUMBER, value, "mmHg", "such as 262", emptyList(),
        act("less-$name", "Less", sign = Sign.SOFTER), act("more-$name", "More", sign = Sign.STRONGER), null, null, "$label, spoken",
    )

    private fun choice(name: String, label: String, vararg options: String) = FieldRow(
        "sample", name, label, FieldKind.CHOICE, "", "", "", options.mapIndexed { place, it -> act("$name-$place", it, chosen = place == 0) },
        null, null, null, null, label,
    )

    private fun ticks(vararg at: Float, label: (Float) -> String) = at.map { Tick(it, label(it)) }

    private fun course(from: Float, to: Float, at: (Float) -> Pair<Float, Float>) = (0..20).map { it / 20f * (to - from) + from }.map {
        val (middle, error) = at(it)
        RibbonPoint(it, middle - error, middle, middle + error)
    }
}
