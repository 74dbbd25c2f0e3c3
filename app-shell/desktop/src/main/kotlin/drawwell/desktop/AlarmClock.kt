package drawwell.desktop

import java.util.concurrent.Executors
import java.util.concurrent.ScheduledFuture
import java.util.concurrent.TimeUnit

/** Rings at instants; an alarm replaces the one of the same key, and one that has rung does not ring again when it is set again. */
class AlarmClock(private val now: () -> Long, private val ring: (title: String, text: String) -> Unit) {
    private val timer = Executors.newSingleThreadScheduledExecutor { work ->
        Thread(work, "drawwell-alarms").apply { isDaemon = true }
    }
    private val set = mutableMapOf<String, ScheduledFuture<*>>()
    private val rung = mutableMapOf<String, Long>()

    @Synchronized
    fun set(key: String, unixMilliseconds: Long, title: String, text: String) {
        set.remove(key)?.cancel(false)
        if (rung[key] == unixMilliseconds) return
        val wait = (unixMilliseconds - now()).coerceAtLeast(0)
        set[key] = timer.schedule({ rings(key, unixMilliseconds, title, text) }, wait, TimeUnit.MILLISECONDS)
    }

    @Synchronized
    fun clear(key: String) {
        set.remove(key)?.cancel(false)
        rung.remove(key)
    }

    private fun rings(key: String, unixMilliseconds: Long, title: String, text: String) {
        synchronized(this) { rung[key] = unixMilliseconds }
        ring(title, text)
    }
}
