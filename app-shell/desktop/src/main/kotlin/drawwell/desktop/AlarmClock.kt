package drawwell.desktop

import java.util.concurrent.Executors
import java.util.concurrent.ScheduledFuture
import java.util.concurrent.TimeUnit

/** Rings at instants; an alarm replaces the one of the same key. */
class AlarmClock(private val now: () -> Long, private val ring: (title: String, text: String) -> Unit) {
    private val timer = Executors.newSingleThreadScheduledExecutor { work ->
        Thread(work, "drawwell-alarms").apply { isDaemon = true }
    }
    private val set = mutableMapOf<String, ScheduledFuture<*>>()

    @Synchronized
    fun set(key: String, unixMilliseconds: Long, title: String, text: String) {
        clear(key)
        val wait = (unixMilliseconds - now()).coerceAtLeast(0)
        set[key] = timer.schedule({ ring(title, text) }, wait, TimeUnit.MILLISECONDS)
    }

    @Synchronized
    fun clear(key: String) {
        set.remove(key)?.cancel(false)
    }
}
