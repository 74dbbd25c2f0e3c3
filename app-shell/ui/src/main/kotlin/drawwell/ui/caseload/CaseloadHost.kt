package drawwell.ui.caseload

import drawwell.surface.Appearance
import drawwell.ui.look.Typefaces
import kotlinx.coroutines.CoroutineDispatcher

/** Whatever only a host can do for the consultant's window. No platform type crosses this line. */
interface CaseloadHost {
    val typefaces: Typefaces

    /** Whether the system asks for less movement. */
    val reducedMotion: Boolean

    /** Whether the system asks for more contrast. */
    val higherContrast: Boolean

    /** The look that was last kept, in this life of the program or one before. */
    val lastLook: Appearance?

    /** Keeps it where it is found before the caseload is open. Called on the record thread. */
    fun keepLook(look: Appearance)

    /** One thread, off the one that draws, on which every call to the core is made in turn. */
    val recordThread: CoroutineDispatcher

    /** Opens the caseload. Called on the record thread. */
    fun openCaseload(): OpenCaseload

    /** Keeps the key that the caseload was opened with by its recovery code. Called on the record thread. */
    fun keepKey(key: ByteArray) = Unit

    /** Lets the person say where a file goes; `write` fills the path it is given. */
    suspend fun handOver(fileName: String, contentType: String, write: suspend (path: String) -> Unit)

    /** Lets the person pick a file; none where nothing was picked. */
    suspend fun pickFile(contentTypes: List<String>): String?

    /** The name of the folder that is watched, or empty. */
    val folderName: String

    /** Lets the person pick a folder to watch, and keeps what was picked. */
    suspend fun pickFolder()

    /** Watches no folder any more. */
    suspend fun leaveFolder()
}
