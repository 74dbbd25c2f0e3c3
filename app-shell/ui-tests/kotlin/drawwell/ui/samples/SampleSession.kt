package drawwell.ui.samples

import drawwell.surface.AmountColumn
import drawwell.surface.AmountsScreen
import drawwell.surface.Band
import drawwell.surface.ChoiceRow
import drawwell.surface.Column
import drawwell.surface.Dial
import drawwell.surface.Frame
import drawwell.surface.Notch
import drawwell.surface.PainMark
import drawwell.surface.Part
import drawwell.surface.Phase
import drawwell.surface.ReadyScreen
import drawwell.surface.RunningScreen
import drawwell.surface.Screen
import drawwell.surface.Sign
import drawwell.surface.StepPoint
import drawwell.surface.Strip
import drawwell.surface.Tick
import drawwell.surface.Weight
import drawwell.ui.samples.SampleFrame.action

/** A session, before, while and after. */
object SampleSession {
    val strip = Strip(
        bands = listOf(
            Band(0f, 0.16f, Phase.LETDOWN, "Letdown"),
            Band(0.16f, 0.52f, Phase.EXPRESSION, "Expression"),
            Band(0.52f, 0.64f, Phase.REST, "Rest"),
            Band(0.64f, 0.76f, Phase.LETDOWN, "Letdown"),
            Band(0.76f, 1f, Phase.EXPRESSION, "Expression"),
        ),
        notches = listOf(Notch(0.13f, "1:40"), Notch(0.74f, "9:10")),
        vacuum = listOf(StepPoint(0f, 0.3f, "3"), StepPoint(0.2f, 0.5f, "5"), StepPoint(0.3f, 0.7f, "7"), StepPoint(0.45f, 0.5f, "5")),
        cycles = listOf(StepPoint(0f, 0.9f, "70"), StepPoint(0.16f, 0.4f, "54"), StepPoint(0.64f, 0.9f, "70"), StepPoint(0.76f, 0.4f, "54")),
        pains = listOf(PainMark(0.44f, 0.6f, true, "6"), PainMark(0.8f, 0.2f, false, "2"), PainMark(0.9f, null, false, "")),
        ticks = listOf(Tick(0f, "0"), Tick(0.4f, "5"), Tick(0.8f, "10 min")),
        spoken = "Twelve minutes, two letdowns",
    )

    fun ready(frame: Frame) = Screen.Ready(
        frame,
        ReadyScreen(
            figure = "3 h 10",
            caption = "since the last session",
            columns = listOf(
                Column(Part.LEFT, "Left", "3 h 10", 0.72f, null, "Left, three hours ten"),
                Column(Part.RIGHT, "Right", "5 h 40", 0.9f, null, "Right, five hours forty"),
            ),
            setUp = listOf(
                row("method", "How", "Pump" to true, "Hand" to false),
                row("sides", "Sides", "Left" to false, "Both" to true, "Right" to false),
                row("pump", "Pump", "Home pump" to true, "Loan pump" to false),
                row("flange", "Flange", "21 mm" to true, "24 mm" to false),
            ),
            start = action("start", "Start", Sign.START, Weight.MAIN),
            add = listOf(
                action("add-past", "Earlier session", Sign.ADD, Weight.QUIET),
                action("add-feed", "Feed", Sign.ADD, Weight.QUIET),
            ),
            spoken = "Three hours ten since the last session",
        ),
    )

    fun running(frame: Frame, marked: Boolean) = Screen.Running(
        frame,
        RunningScreen(
            figure = if (marked) "12:34" else "0:08",
            caption = if (marked) "Expression for 3 minutes" else "Just started",
            strip = if (marked) strip else Strip(
                listOf(Band(0f, 1f, Phase.UNSAID, "")), emptyList(), emptyList(), emptyList(), emptyList(),
                listOf(Tick(0f, "0")), "Just started",
            ),
            dials = listOf(
                Dial("vacuum", "Vacuum", if (marked) "Level 5" else "Not set", "Vacuum level 5",
                    action("softer", "Softer", Sign.SOFTER), action("stronger", "Stronger", Sign.STRONGER)),
                Dial("cycles", "Cycles a minute", if (marked) "54" else "Not set", "54 cycles a minute",
                    action("slower", "Slower", Sign.SLOWER), action("faster", "Faster", Sign.FASTER)),
            ),
            marks = listOf(
                action("mark-hurts", "It hurts", Sign.HURTS),
                action("mark-rest", "Rest", Sign.REST),
                action("mark-phase", "Expression", Sign.NONE),
                action("mark-letdown", "Letdown", Sign.LETDOWN),
            ),
            pain = null,
            finish = action("finish", "Finish", Sign.FINISH, Weight.MAIN),
            spoken = "Running",
        ),
    )

    fun amounts(frame: Frame) = Screen.Amounts(
        frame,
        AmountsScreen(
            session = "s",
            headline = "What came?",
            caption = "12 minutes, both sides",
            strip = strip,
            columns = listOf(
                column(Part.LEFT, "Left", "65 mL", 0.43f, 0.5f),
                column(Part.RIGHT, "Right", "Not yet", null, 0.36f),
            ),
            scale = (0..3).map { Tick(it / 3f, "${it * 50}") },
            together = row("together", "Measured", "Each side" to true, "Together" to false),
            done = action("done", "Done", Sign.NONE, Weight.MAIN),
            later = action("later", "Later", Sign.NONE, Weight.QUIET),
            spoken = "Amounts",
        ),
    )

    private fun column(part: Part, label: String, text: String, height: Float?, ghost: Float?) = AmountColumn(
        Column(part, label, text, height, ghost, "$label $text"),
        (0..30).map { Tick(it / 30f, "${it * 5} mL") },
        action("less-${part.name.lowercase()}", "−"),
        action("more-${part.name.lowercase()}", "+"),
        action("unknown-${part.name.lowercase()}", "Not known", Sign.UNKNOWN, Weight.QUIET),
    )

    private fun row(key: String, label: String, vararg options: Pair<String, Boolean>) = ChoiceRow(
        key, label, options.map { (word, chosen) -> action("$key-${word.lowercase().replace(' ', '-')}", word, chosen = chosen) },
    )
}
