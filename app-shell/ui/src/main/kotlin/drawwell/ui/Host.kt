package drawwell.ui

import drawwell.surface.Appearance
import drawwell.surface.Effect
import drawwell.surface.Event
import drawwell.ui.look.Typefaces
import kotlinx.coroutines.CoroutineDispatcher

/** Whatever only a host can do. No platform type crosses this line. */
interface Host {
    val typefaces: Typefaces

    /** Whether the system asks for less movement. */
    val reducedMotion: Boolean

    /** Whether the system asks for more contrast. Read while drawing: a host that hears of a change keeps it as state. */
    val higherContrast: Boolean

    /** The look that was last kept, in this life of the program or one before. */
    val lastLook: Appearance?

    /** Keeps it where it is found before the record is open. Called on the record thread. */
    fun keepLook(look: Appearance)

    /** One thread, off the one that draws, on which every call to the core is made in turn. */
    val recordThread: CoroutineDispatcher

    /** Opens the person's own record. Called on the record thread. */
    fun openOwnRecord(): OpenRecord

    /** Keeps the key that a record was opened with by its recovery code. Called on the record thread. */
    fun keepKey(key: ByteArray) = Unit

    /** Opens a fresh record with the invented family in it. Called on the record thread. */
    fun openLookAround(): OpenRecord

    /** A short touch: a tap is on disk. */
    fun buzz()

    fun keepScreenOn(on: Boolean)

    /** How this host can call now. Asked on the record thread. */
    val alarmsAre: Event.AlarmsAre

    /** Calls the person at its instant; replaces the alarm of the same key, and shows in the place of its slot. */
    fun setAlarm(alarm: Effect.SetAlarm)

    fun clearAlarm(key: String)

    /** Opens the dialler with a number in it. Nothing is dialled before the person does it. */
    fun dial(number: String)

    /** Lets the person say where a file goes; `write` fills the path it is given. */
    suspend fun handOver(fileName: String, contentType: String, write: suspend (path: String) -> Unit)

    /** Lets go of every copy of a file that came in or went out. */
    fun forgetFiles()

    /** Lets the person pick a file; none where nothing was picked. */
    suspend fun pickFile(contentTypes: List<String>): String?
}
