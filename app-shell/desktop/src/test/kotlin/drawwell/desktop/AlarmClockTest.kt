package drawwell.desktop

import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.junit.Test
import java.util.concurrent.LinkedBlockingQueue
import java.util.concurrent.TimeUnit

class AlarmClockTest {
    private val rung = LinkedBlockingQueue<String>()
    private val clock = AlarmClock({ 1000 }) { title, text -> rung += "$title $text" }

    @Test
    fun ringsAtItsInstantAndTheLaterOfOneKeyReplacesTheEarlier() {
        clock.set("key", 1100, "first", "one")
        clock.set("key", 1060, "second", "one")
        assertEquals("second one", rung.poll(5, TimeUnit.SECONDS))
        assertNull(rung.poll(200, TimeUnit.MILLISECONDS))
    }

    @Test
    fun whatHasRungDoesNotRingAgainWhenItIsSetAgain() {
        clock.set("key", 900, "once", "only")
        assertEquals("once only", rung.poll(5, TimeUnit.SECONDS))
        clock.set("key", 900, "once", "only")
        assertNull(rung.poll(200, TimeUnit.MILLISECONDS))
        clock.clear("key")
        clock.set("key", 900, "again", "later")
        assertEquals("again later", rung.poll(5, TimeUnit.SECONDS))
    }

    @Test
    fun whatIsClearedDoesNotRing() {
        clock.set("key", 1050, "never", "rings")
        clock.clear("key")
        assertNull(rung.poll(200, TimeUnit.MILLISECONDS))
    }
}
