package drawwell.ui

import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import drawwell.surface.Appearance
import drawwell.surface.Clock
import drawwell.surface.Drawwell
import drawwell.surface.Effect
import drawwell.surface.Event
import drawwell.surface.Opening
import drawwell.ui.look.KeptLook
import drawwell.ui.look.Typefaces
import java.io.File
import kotlinx.coroutines.CoroutineDispatcher
import kotlinx.coroutines.Dispatchers

/** A host over the real core, with a clock that stands until it is moved, and that remembers what it was asked for. */
class TestHost(override val typefaces: Typefaces, val record: File) : Host {
    var milliseconds: Long = 1_780_000_000_000L
    val asked = mutableListOf<String>()

    /** Whether the record can't be opened. */
    var closed = false

    private val open = mutableListOf<Drawwell>()

    /** Where a file that is handed over goes, or which file is picked. */
    var file: File? = null

    private val look = record.resolveSibling("look").let { file -> KeptLook(file::readText, file::writeText) }

    override val reducedMotion: Boolean = true
    override var higherContrast: Boolean by mutableStateOf(false)
    override val lastLook: Appearance? get() = look.look
    override val recordThread: CoroutineDispatcher = Dispatchers.Unconfined

    /** The record that was opened last. */
    val core: Drawwell get() = open.last()

    fun now() = Clock(milliseconds, "Europe/Berlin")

    fun pass(seconds: Int) {
        milliseconds += seconds * 1000L
    }

    override fun openOwnRecord(): OpenRecord {
        check(!closed) { "the record is not open yet" }
        return OpenRecord(openCore(), ::now)
    }

    fun openCore(): Drawwell = Drawwell.open(record.path, Opening("test", "en", false), now()).also { open += it }

    /** Ends as a program that is left does: all that is open is closed. */
    fun close() {
        open.forEach { it.close() }
        open.clear()
    }

    override fun openLookAround(): OpenRecord {
        val other = record.resolveSibling("look-around.drawwell")
        return OpenRecord(Drawwell.open(other.path, Opening("test", "en", true), now()), ::now)
    }

    override fun keepLook(look: Appearance) = this.look.keep(look)

    override fun buzz() {
        asked += "buzz"
    }

    override fun keepScreenOn(on: Boolean) {
        asked += "screen on: $on"
    }

    override var alarmsAre = Event.AlarmsAre(exact = true, shown = true)

    override fun setAlarm(alarm: Effect.SetAlarm) {
        asked += "alarm ${alarm.key}"
    }

    override fun clearAlarm(key: String) {
        asked += "no alarm $key"
    }

    override fun forgetFiles() = Unit

    override fun dial(number: String) {
        asked += "dial $number"
    }

    override suspend fun handOver(fileName: String, contentType: String, write: suspend (path: String) -> Unit) {
        file?.let { write(it.path) }
    }

    override suspend fun pickFile(contentTypes: List<String>): String? = file?.path
}
