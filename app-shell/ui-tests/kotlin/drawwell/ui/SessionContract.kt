package drawwell.ui

import drawwell.surface.Event
import drawwell.surface.Place
import drawwell.surface.Screen
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import kotlin.math.abs

/** What a session costs the thumb. */
abstract class SessionContract : ShellContract() {
    @Test
    fun aPlainSessionCostsTwoTaps() {
        val stage = begun()
        stage.tap("start")
        stage.host.pass(900)
        stage.tap("finish")
        assertEquals(2, stage.gestures)
        stage.say(Event.Go(Place.Day(0u)))
        assertEquals(1, (stage.screen as Screen.Day).day.entries.size)
    }

    @Test
    fun aSessionWithPhasesLetdownAndBothAmountsCostsEightGestures() {
        val stage = begun()
        stage.tap("start")
        stage.host.pass(90)
        stage.tap("mark-letdown")
        stage.host.pass(10)
        stage.tap("mark-expression-phase")
        stage.host.pass(300)
        stage.tap("mark-letdown-phase")
        val strip = (stage.screen as Screen.Running).running.strip
        assertEquals(1, strip.notches.size)
        assertEquals(3, strip.bands.size)
        stage.host.pass(600)
        stage.tap("finish")
        stage.draw("left", 0.5f)
        stage.draw("right", 0.7f)
        val columns = (stage.screen as Screen.Amounts).amounts.columns
        assertTrue(columns.all { it.column.height != null })
        stage.tap("amounts-done")
        assertEquals(8, stage.gestures)
        assertTrue(stage.screen is Screen.Ready)
    }

    @Test
    fun theLineGoesWhereTheThumbDrewIt() {
        val stage = begun()
        stage.tap("start")
        stage.host.pass(600)
        stage.tap("finish")
        val readings = (stage.screen as Screen.Amounts).amounts.columns.first().readings
        val middle = readings.minBy { abs(it.at - 0.5f) }
        stage.draw("left", 0.5f)
        val (left, right) = (stage.screen as Screen.Amounts).amounts.columns
        assertEquals(middle.label, left.column.text)
        assertEquals(null, right.column.height)
    }

    @Test
    fun everyAnsweredTapIsFeltAndTheScreenStaysOnWhileItRuns() {
        val stage = begun()
        stage.tap("start")
        assertTrue("screen on: true" in stage.host.asked)
        assertTrue("buzz" in stage.host.asked)
        stage.tap("finish")
        assertEquals("screen on: false", stage.host.asked.last { it.startsWith("screen") })
    }
}
