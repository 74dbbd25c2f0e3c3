package drawwell.desktop

import drawwell.surface.Appearance
import drawwell.surface.Effect
import drawwell.surface.Event
import drawwell.surface.keepPlatformKey
import drawwell.ui.Host
import drawwell.ui.OpenRecord
import drawwell.ui.look.KeptLook
import drawwell.ui.look.Typefaces
import java.awt.Desktop
import java.net.URI
import kotlinx.coroutines.CoroutineDispatcher

/** What a desk can do for the shell. */
class DesktopHost(
    override val typefaces: Typefaces,
    private val thread: RecordThread,
    private val records: Records,
    private val alarms: AlarmClock,
    private val notifications: Notifications,
    private val dialogs: FileDialogs,
    private val look: KeptLook,
    override val higherContrast: Boolean,
) : Host {
    private var own: OpenRecord? = null
    private var ahead: Result<OpenRecord>? = null

    override val reducedMotion: Boolean = Motion.reduced()

    override val lastLook: Appearance? get() = look.look

    override fun keepLook(look: Appearance) = this.look.keep(look)

    override val recordThread: CoroutineDispatcher get() = thread.dispatcher

    /** Opens the record while the window is still being made. What goes wrong is said when the window asks. */
    fun openAhead() = thread.begin { ahead = runCatching { records.open() } }

    override fun openOwnRecord(): OpenRecord {
        val opened = ahead ?: runCatching { records.open() }
        ahead = null
        return opened.getOrThrow().also { own = it }
    }

    /** Where the desk has no store for keys, the code is asked for again at the next start. */
    override fun keepKey(key: ByteArray) {
        keepPlatformKey(key)
    }

    override fun openLookAround(): OpenRecord = LookAroundRecord.open()

    /** A desk has nothing to buzz with, and a sound would wake the house. */
    override fun buzz() = Unit

    /** The lamp of a desk is not ours to hold. */
    override fun keepScreenOn(on: Boolean) = Unit

    /** A desk rings on the minute for as long as the program runs. */
    override val alarmsAre: Event.AlarmsAre get() = Event.AlarmsAre(exact = true, shown = notifications.areOn())

    override fun setAlarm(alarm: Effect.SetAlarm) = alarms.set(alarm)

    override fun clearAlarm(key: String) = alarms.clear(key)

    /** Whatever this desk calls with, if anything does: the number stands on the button too. */
    override fun dial(number: String) {
        runCatching { Desktop.getDesktop().browse(URI("tel", number.filterNot(Char::isWhitespace), null)) }
    }

    override suspend fun handOver(fileName: String, contentType: String, write: suspend (path: String) -> Unit) {
        dialogs.whereTo(fileName)?.let { write(it.path) }
    }

    /** Files are read where they lie and written where the person says: a desk keeps no copies. */
    override fun forgetFiles() = Unit

    override suspend fun pickFile(contentTypes: List<String>): String? = dialogs.which()?.path

    /** Closes the record when all that was said to it is on disk. */
    fun close() = thread.close { (own?.core as? AutoCloseable)?.close() }
}
