package drawwell.desktop

import java.awt.FileDialog
import java.awt.Frame
import java.io.File

/** The system's own dialogs for files. */
class FileDialogs(private val window: () -> Frame?) {
    fun whereTo(fileName: String): File? = ask(FileDialog.SAVE) { it.file = fileName }

    fun which(): File? = ask(FileDialog.LOAD) {}

    private fun ask(mode: Int, prepare: (FileDialog) -> Unit): File? {
        val dialog = FileDialog(window(), "", mode)
        prepare(dialog)
        dialog.isVisible = true
        val file = dialog.file ?: return null
        return File(dialog.directory, file)
    }
}
