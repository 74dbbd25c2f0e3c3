package drawwell.desktop.pictures

import drawwell.surface.Event
import drawwell.surface.Place
import drawwell.surface.Screen

/** The way through Tonight: the night ahead, changed by hand, then in the middle of it, late, and with a session that runs. */
internal class TonightWalk(
    private val does: (Event) -> Screen,
    private val pass: (seconds: Int) -> Unit,
    private val keep: (String, Screen) -> Unit,
) {
    fun through() {
        keep("tonight", tonight())
        listOf("plan-later", "plan-skip", "plan-earlier").forEach { does(act(it)) }
        keep("tonight-changed", tonight())
        repeat(3) { does(Event.Undo) }
        pass(EVENING)
        express()
        pass(ASLEEP)
        express()
        pass(A_WHILE)
        keep("tonight-in-the-night", tonight())
        full()
        pass(LATE)
        keep("tonight-late", tonight())
        does(Event.Start)
        pass(A_WHILE)
        keep("tonight-running", tonight())
        finish()
    }

    /** A night with all that can stand in it, and one session left out. */
    private fun full() {
        stands("feed", "03:30", "03:50", "either")
        stands("care_time", "04:40", "05:20", "in_it")
        stands("shift", "07:00", "15:00", "not_in_it")
        does(act("plan-skip"))
        keep("tonight-full", tonight())
        repeat(STANDS * FIELDS + 1) { does(Event.Undo) }
    }

    private fun stands(what: String, from: String, until: String, session: String) {
        val id = (does(Event.Add("fixed_point", 0u)) as Screen.Form).form.id
        listOf("what" to what, "from" to from, "until" to until, "session_in" to session).forEach { (field, typed) -> does(Event.Enter(id, field, typed)) }
    }

    private fun tonight() = does(Event.Go(Place.Tonight))

    private fun act(key: String): Event = (tonight() as Screen.Tonight).tonight.actions.single { it.key == key }.event

    private fun express() {
        does(Event.Go(Place.Now))
        does(Event.Start)
        pass(SESSION)
        finish()
    }

    private fun finish() {
        does(Event.Go(Place.Now))
        does(Event.AmountsLater((does(Event.Finish) as Screen.Amounts).amounts.session))
    }

    private companion object {
        const val EVENING = 9 * 3600
        const val ASLEEP = 4 * 3600
        const val A_WHILE = 12 * 60
        const val SESSION = 20 * 60
        const val LATE = 4 * 3600
        const val STANDS = 3

        /** An addition, and four fields of it. */
        const val FIELDS = 5
    }
}
