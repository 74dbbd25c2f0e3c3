package drawwell.ui

import androidx.compose.ui.text.font.FontFamily
import drawwell.surface.Appearance
import drawwell.surface.Clock
import drawwell.surface.Effect
import drawwell.surface.Event
import drawwell.ui.look.Typefaces
import kotlinx.coroutines.CoroutineDispatcher
import kotlinx.coroutines.Dispatchers

/** A host that remembers what it was asked for. */
internal class FakeHost(val own: FakeCore = FakeCore("own"), val other: FakeCore = FakeCore("other")) : Host {
    val asked = mutableListOf<String>()
    var opens: () -> FakeCore = { own }

    override val typefaces = Typefaces(FontFamily.Default)
    override val reducedMotion = true
    override val higherContrast = false
    override var lastLook: Appearance? = null
    override var recordThread: CoroutineDispatcher = Dispatchers.Default

    override fun openOwnRecord() = OpenRecord(opens()) { CLOCK }

    override fun openLookAround() = OpenRecord(other) { CLOCK }

    override fun keepLook(look: Appearance) {
        lastLook = look
    }

    override fun buzz() {
        asked += "buzz"
    }

    override fun keepScreenOn(on: Boolean) {
        asked += "screen $on"
    }

    override var alarmsAre = Event.AlarmsAre(exact = true, shown = true)

    override fun setAlarm(alarm: Effect.SetAlarm) {
        asked += "alarm ${alarm.key}"
    }

    override fun dial(number: String) = Unit

    override fun forgetFiles() = Unit

    override fun clearAlarm(key: String) {
        asked += "no alarm $key"
    }

    override suspend fun handOver(fileName: String, contentType: String, write: suspend (path: String) -> Unit) =
        write("folder/$fileName")

    override suspend fun pickFile(contentTypes: List<String>): String = "picked"

    private companion object {
        val CLOCK = Clock(0, "UTC")
    }
}
