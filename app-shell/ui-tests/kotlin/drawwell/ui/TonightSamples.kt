package drawwell.ui

import drawwell.surface.Action
import drawwell.surface.Appearance
import drawwell.surface.ChoiceRow
import drawwell.surface.Frame
import drawwell.surface.Hand
import drawwell.surface.ListGroup
import drawwell.surface.ListRow
import drawwell.surface.NightFigure
import drawwell.surface.NightPicture
import drawwell.surface.NightStretch
import drawwell.surface.Notice
import drawwell.surface.Palette
import drawwell.surface.Peg
import drawwell.surface.PegState
import drawwell.surface.RibbonPoint
import drawwell.surface.Screen
import drawwell.surface.Section
import drawwell.surface.Sign
import drawwell.surface.StretchKind
import drawwell.surface.Tick
import drawwell.surface.Tone
import drawwell.surface.TonightScreen
import drawwell.surface.Weight
import drawwell.ui.KitSamples.act

/** Tonight with everything on it that can be there at once, which no one record would show. Made by hand. */
object TonightSamples {
    fun night(hand: Hand = Hand.RIGHT) = Screen.Tonight(frame(hand), tonight)

    /** Before there is a plan. */
    fun asked(hand: Hand = Hand.RIGHT) = Screen.Tonight(
        frame(hand),
        tonight.copy(
            headline = "How many sessions a day?", figure = "", caption = "Choose what you agreed on.", why = "",
            asks = emptyList(), actions = emptyList(), night = null, figures = emptyList(),
            choices = listOf(ChoiceRow("sessions", "Sessions a day", listOf("5", "6", "7", "8", "10", "12").map { act("sessions-$it", it) })),
            times = ListGroup("times", "", emptyList(), "", emptyList()), sections = emptyList(),
        ),
    )

    private fun frame(hand: Hand) = Frame(
        "Tonight", "Friday, 14 August",
        listOf("Now" to Sign.NOW, "Tonight" to Sign.TONIGHT, "Supply" to Sign.SUPPLY, "Kit" to Sign.KIT, "Visit" to Sign.VISIT).map { (word, sign) ->
            act("place-${word.lowercase()}", word, Weight.QUIET, sign, chosen = word == "Tonight")
        },
        null, act("undo", "Undo", Weight.QUIET, Sign.UNDO, "session moved"), null, emptyList(), Appearance(hand, Palette.LIGHT), false, emptyList(), null,
    )

    private fun change(key: String, label: String, sign: Sign, detail: String): Action = act(key, label, Weight.PLAIN, sign, detail)

    private val tonight = TonightScreen(
        "Next session", "03:15", "in 2 h 40", "Without it the gap would be 7 h 30; the longest is 6 h.",
        listOf(
            Notice("gives-way", Tone.QUIET, "The longest sleep is 4 h 30; 6 h does not fit with the rest.", "The longest sleep is 4 h 30.", emptyList()),
            Notice("ask-reminders", Tone.ASKS, "Shall this phone remind you of the next session?", "Shall this phone remind you?", listOf("With sound", "Quietly", "Not at all").map { act("reminders-$it", it, Weight.QUIET) }),
        ),
        act("start", "Start", Weight.MAIN, Sign.START),
        listOf(
            change("plan-earlier", "Earlier", Sign.EARLIER, "15 min"), change("plan-later", "Later", Sign.LATER, "15 min"),
            change("plan-snooze", "In a while", Sign.SNOOZE, "10 min"), change("plan-skip", "Leave out", Sign.SKIP, "this one"),
        ),
        picture(),
        listOf(figure("sleep", "Sleep left", "6 h 10", "longest 3 h 40"), figure("milk", "Milk by morning", "180 mL", "150 to 220 mL, by 06:45"), figure("wakings", "In the night", "2", "sessions to come")),
        emptyList(),
        ListGroup("times", "The times to come", listOf(row("03:15", "Without it the gap would be 7 h 30."), row("06:45", "On waking.")), "", emptyList()),
        listOf(
            Section("choices", "What a choice costs", listOf("As planned, the longest sleep is 3 h 40."), null, emptyList(), listOf(row("One sleep of 5 h", "About 20 mL less a day (0 to 40 mL).")), emptyList(), null),
            Section("set", "What is set", emptyList(), null, emptyList(), emptyList(), listOf(act("hand-over-calendar", "As a calendar", Weight.QUIET, Sign.CALENDAR)), null),
        ),
        "Next session, 03:15, in 2 h 40",
    )

    /** From 20 to 8, every state and every kind of stretch in it, two of them close together. */
    fun picture() = NightPicture(
        listOf(
            peg(19.75f, 0.3f, PegState.FEED, "19:45"), peg(20.5f, 0.35f, PegState.DONE, "20:30"), peg(21.25f, 0f, PegState.SKIPPED, "21:15"), peg(23.75f, 0.35f, PegState.DONE, "23:45"),
            peg(27.25f, 0.35f, PegState.NEXT, "03:15"), peg(28f, 0.35f, PegState.PLANNED, "04:00"), peg(30.75f, 0.35f, PegState.FIXED, "06:45"),
        ),
        listOf(
            stretch(22f, 30.5f, StretchKind.WINDOW, ""), stretch(22f, 23.75f, StretchKind.SLEEP, "1 h 45"), stretch(24.25f, 27.25f, StretchKind.SLEEP, "3 h"),
            stretch(28.5f, 30.5f, StretchKind.SLEEP, "2 h"), stretch(19.7f, 20.2f, StretchKind.FEED, "Feed"), stretch(20.4f, 21.8f, StretchKind.WANTED, "Break"),
            stretch(30.6f, 32f, StretchKind.BUSY, "Shift"),
        ),
        listOf(19.5f, 20.85f, 24.1f, 27.6f, 28.35f, 31.1f, 32f).zipWithNext().flatMap { (from, to) ->
            (0..8).map { from + (to - from) * it / 8 }.map { hour -> ((hour - from) / 4.2f).let { RibbonPoint(at(hour), it * 0.75f, it * 0.9f, (it * 1.08f).coerceAtMost(1f)) } }
        },
        at(24.6f),
        listOf(20, 22, 24, 26, 28, 30, 32).map { Tick(at(it.toFloat()), "${it % 24}") },
        listOf(Tick(0.5f, "60"), Tick(1f, "120 mL")),
        "Pegs: sessions. Bands: sleep. The line: about what the breasts hold, with its range.", true, "What the picture shows",
        "The night from 22:00 to 06:30: 6 h 45 of sleep, the longest 3 h.",
    )

    private const val FROM = 19.5f
    private const val TO = 32f

    private fun at(hour: Float) = (hour - FROM) / (TO - FROM)

    private fun peg(hour: Float, long: Float, state: PegState, label: String) = Peg(at(hour), at(hour + long), state, label)

    private fun stretch(from: Float, to: Float, kind: StretchKind, label: String) = NightStretch(at(from), at(to), kind, label)

    private fun figure(key: String, title: String, figure: String, detail: String) = NightFigure(key, title, figure, detail, "$title: $figure, $detail")

    private fun row(title: String, detail: String) = ListRow(title, detail, "", "$title, $detail", act("open-$title", title))
}
