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
        pass(LATE)
        keep("tonight-late", tonight())
        does(Event.Start)
        pass(A_WHILE)
        keep("tonight-running", tonight())
        finish()
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
    }
}
