package drawwell.ui

import drawwell.surface.Clock
import drawwell.surface.Drawwell
import drawwell.surface.Opening
import drawwell.ui.look.Typefaces
import kotlinx.coroutines.CoroutineDispatcher
import kotlinx.coroutines.Dispatchers
import java.io.File

/** A host over the real core, with a clock that stands until it is moved, and that remembers what it was asked for. */
class TestHost(override val typefaces: Typefaces, private val record: File) : Host {
    var milliseconds: Long = 1_780_000_000_000L
    val asked = mutableListOf<String>()

    /** Where a file that is handed over goes, or which file is picked. */
    var file: File? = null

    override val reducedMotion: Boolean = true
    override val recordThread: CoroutineDispatcher = Dispatchers.Unconfined

    fun now() = Clock(milliseconds, "Europe/Berlin")

    fun pass(seconds: Int) {
        milliseconds += seconds * 1000L
    }

    override fun openOwnRecord(): OpenRecord = OpenRecord(openCore(), ::now)

    fun openCore(): Drawwell = Drawwell.open(record.path, Opening("test", "en", false), now())

    override fun openLookAround(): OpenRecord {
        val other = record.resolveSibling("look-around.drawwell")
        return OpenRecord(Drawwell.open(other.path, Opening("test", "en", true), now()), ::now)
    }

    override fun buzz() {
        asked += "buzz"
    }

    override fun keepScreenOn(on: Boolean) {
        asked += "screen on: $on"
    }

    override fun setAlarm(key: String, unixMilliseconds: Long, title: String, text: String) {
        asked += "alarm $key"
    }

    override fun clearAlarm(key: String) {
        asked += "no alarm $key"
    }

    override suspend fun handOver(fileName: String, contentType: String, write: suspend (path: String) -> Unit) {
        file?.let { write(it.path) }
    }

    override suspend fun pickFile(contentTypes: List<String>): String? = file?.path
}
