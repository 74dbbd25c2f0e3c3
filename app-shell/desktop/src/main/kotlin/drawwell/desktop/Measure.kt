package drawwell.desktop

import java.lang.management.ManagementFactory

/** Tells how long the start took, from the birth of the process. */
class Measure(private val done: () -> Unit) {
    private val begun = ManagementFactory.getRuntimeMXBean().startTime
    private var firstFrame: Long? = null

    fun drawn(recordOpen: Boolean) {
        val passed = System.currentTimeMillis() - begun
        if (firstFrame == null) {
            firstFrame = passed
            println("first frame: $passed ms")
        }
        if (recordOpen) {
            println("record shown: $passed ms")
            done()
        }
    }
}
