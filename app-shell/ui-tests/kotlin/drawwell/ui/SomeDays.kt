package drawwell.ui

import drawwell.surface.Clock
import drawwell.surface.Event
import drawwell.surface.Part
import drawwell.surface.Screen
import drawwell.ui.pictures.drawing

/** Days of sessions, each with what came of both sides; written without a gesture and without a screen. */
object SomeDays {
    private const val DAYS = 8
    private const val EVERY = 4 * 3600
    private const val LONG = 15 * 60

    fun on(stage: Stage) {
        val host = stage.host
        fun does(event: Event): Screen = stage.core.update(event, Clock(host.milliseconds, "Europe/Berlin")).screen
        repeat(DAYS * 24 * 3600 / EVERY) {
            does(Event.Start)
            host.pass(LONG)
            val amounts = does(Event.Finish)
            does(amounts.drawing(Part.LEFT, 0.5f))
            does(amounts.drawing(Part.RIGHT, 0.7f))
            does(Event.AmountsDone((amounts as Screen.Amounts).amounts.session))
            host.pass(EVERY - LONG)
        }
    }
}
