package drawwell.desktop

import kotlinx.coroutines.asCoroutineDispatcher
import java.util.concurrent.Executors
import java.util.concurrent.TimeUnit

/** The one thread that calls the core. */
class RecordThread {
    private val thread = Executors.newSingleThreadExecutor { work -> Thread(work, "drawwell-record") }

    val dispatcher = thread.asCoroutineDispatcher()

    fun begin(work: () -> Unit) = thread.execute(work)

    /** Lets what was begun end, does this last, and stops. */
    fun close(last: () -> Unit) {
        thread.execute(last)
        thread.shutdown()
        thread.awaitTermination(PATIENCE, TimeUnit.SECONDS)
    }

    private companion object {
        const val PATIENCE = 5L
    }
}
