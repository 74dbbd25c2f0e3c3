package drawwell.desktop.caseload

import drawwell.surface.Appearance
import drawwell.surface.Clock
import drawwell.surface.Desk
import drawwell.surface.Opening
import drawwell.ui.caseload.CaseloadHost
import drawwell.ui.caseload.OpenCaseload
import drawwell.ui.look.Typefaces
import java.io.File
import kotlinx.coroutines.CoroutineDispatcher
import kotlinx.coroutines.Dispatchers

/** A host over the real core, whose clock stands and whose dialogs are answered beforehand. */
class TestCaseloadHost(override val typefaces: Typefaces, private val folder: File, private val now: Clock) : CaseloadHost {
    /** Where a file that is handed over goes, or which file is picked. */
    var file: File? = null

    /** Which folder is picked. */
    var picked: File? = null
    val watch = FolderWatch(folder.resolve("watched"))
    private var open: Desk? = null

    override val reducedMotion = true
    override val higherContrast = false
    override var lastLook: Appearance? = null
        private set
    override val recordThread: CoroutineDispatcher = Dispatchers.Unconfined

    override fun keepLook(look: Appearance) {
        lastLook = look
    }

    override fun openCaseload(): OpenCaseload {
        val desk = Desk.open(folder.path, Opening("desk", "en", false), now).also { open = it }
        return OpenCaseload(desk) { now }
    }

    override suspend fun handOver(fileName: String, contentType: String, write: suspend (path: String) -> Unit) {
        file?.let { write(it.path) }
    }

    override suspend fun pickFile(contentTypes: List<String>): String? = file?.path

    override val folderName get() = watch.name

    override suspend fun pickFolder() {
        picked?.let(watch::choose)
    }

    override suspend fun leaveFolder() = watch.leave()

    fun close() {
        open?.close()
    }
}
