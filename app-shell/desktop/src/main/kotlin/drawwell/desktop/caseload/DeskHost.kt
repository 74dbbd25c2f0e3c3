package drawwell.desktop.caseload

import drawwell.desktop.FileDialogs
import drawwell.desktop.Motion
import drawwell.desktop.RecordThread
import drawwell.surface.Appearance
import drawwell.surface.keepPlatformKey
import drawwell.ui.caseload.CaseloadHost
import drawwell.ui.caseload.OpenCaseload
import drawwell.ui.look.KeptLook
import drawwell.ui.look.Typefaces
import kotlinx.coroutines.CoroutineDispatcher
import kotlinx.coroutines.Dispatchers
import kotlinx.coroutines.withContext

/** What a desk can do for the consultant's window. */
class DeskHost(
    override val typefaces: Typefaces,
    private val thread: RecordThread,
    private val caseloads: Caseloads,
    private val dialogs: FileDialogs,
    private val watch: FolderWatch,
    private val look: KeptLook,
    override val higherContrast: Boolean,
) : CaseloadHost {
    private var open: OpenCaseload? = null

    override val reducedMotion: Boolean = Motion.reduced()

    override val lastLook: Appearance? get() = look.look

    override fun keepLook(look: Appearance) = this.look.keep(look)

    override val recordThread: CoroutineDispatcher get() = thread.dispatcher

    override fun openCaseload(): OpenCaseload = caseloads.open().also { open = it }

    override fun keepKey(key: ByteArray) {
        keepPlatformKey(key)
    }

    override suspend fun handOver(fileName: String, contentType: String, write: suspend (path: String) -> Unit) {
        dialogs.whereTo(fileName)?.let { write(it.path) }
    }

    override suspend fun pickFile(contentTypes: List<String>): String? = dialogs.which()?.path

    override val folderName: String get() = watch.name

    override suspend fun pickFolder() {
        dialogs.whichFolder()?.let { folder -> withContext(Dispatchers.IO) { watch.choose(folder) } }
    }

    override suspend fun leaveFolder() = withContext(Dispatchers.IO) { watch.leave() }

    /** Closes the caseload when all that was said to it is on disk. */
    fun close() = thread.close { (open?.core as? AutoCloseable)?.close() }
}
