package drawwell.desktop

import drawwell.surface.Clock
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test
import java.util.TimeZone

/** A clock that was set, a desk that slept and another zone are each noticed once; time that passes is not. */
class ClockWatchTest {
    private var wall = 1_780_000_000_000L
    private var steady = 5_000_000_000L
    private var zone = "Europe/Berlin"
    private val watch = ClockWatch({ Clock(wall, zone) }, { steady })

    private fun pass(milliseconds: Long) {
        wall += milliseconds
        steady += milliseconds * 1_000_000
    }

    @Test
    fun timeThatPassesIsNoChange() = repeat(100) {
        pass(ClockWatch.EVERY + it)
        assertFalse(watch.changed())
    }

    @Test
    fun aClockThatIsSetForwardOrBackIsNoticedOnce() = listOf(3_600_000L, -3_600_000L, 10_000L).forEach { by ->
        pass(ClockWatch.EVERY)
        wall += by
        assertTrue("$by", watch.changed())
        pass(ClockWatch.EVERY)
        assertFalse("$by", watch.changed())
    }

    @Test
    fun anotherZoneIsNoticedOnce() {
        zone = "Pacific/Auckland"
        assertTrue(watch.changed())
        assertFalse(watch.changed())
    }

    @Test
    fun javaLooksAtTheZoneOfTheDeskAgain() {
        val before = TimeZone.getDefault()
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"))
            assertEquals(before.id, OwnZone.look().id)
        } finally {
            TimeZone.setDefault(before)
        }
    }
}
