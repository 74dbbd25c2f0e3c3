package drawwell.desktop

import drawwell.surface.Effect
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.junit.Test
import java.util.concurrent.LinkedBlockingQueue
import java.util.concurrent.TimeUnit

class AlarmClockTest {
    private val rung = LinkedBlockingQueue<String>()
    private val clock = AlarmClock({ 1000 }) { rung += "${it.title} ${it.text}" }

    @Test
    fun ringsAtItsInstantAndTheLaterOfOneKeyReplacesTheEarlier() {
        clock.set(alarm(1100, "first", "one"))
        clock.set(alarm(1060, "second", "one"))
        assertEquals("second one", rung.poll(5, TimeUnit.SECONDS))
        assertNull(rung.poll(200, TimeUnit.MILLISECONDS))
    }

    @Test
    fun whatHasRungDoesNotRingAgainWhenItIsSetAgain() {
        clock.set(alarm(900, "once", "only"))
        assertEquals("once only", rung.poll(5, TimeUnit.SECONDS))
        clock.set(alarm(900, "once", "only"))
        assertNull(rung.poll(200, TimeUnit.MILLISECONDS))
        clock.clear("key")
        clock.set(alarm(900, "again", "later"))
        assertEquals("again later", rung.poll(5, TimeUnit.SECONDS))
    }

    @Test
    fun whatIsClearedDoesNotRing() {
        clock.set(alarm(1050, "never", "rings"))
        clock.clear("key")
        assertNull(rung.poll(200, TimeUnit.MILLISECONDS))
    }

    private fun alarm(at: Long, title: String, text: String) = Effect.SetAlarm("key", "slot", at, title, text, quiet = false)
}
