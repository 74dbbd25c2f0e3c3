package drawwell.desktop

import java.awt.FileDialog
import java.awt.Frame
import java.io.File
import javax.swing.JFileChooser

/** The system's own dialogs for files. */
class FileDialogs(private val window: () -> Frame?) {
    fun whereTo(fileName: String): File? = ask(FileDialog.SAVE) { it.file = fileName }

    fun which(): File? = ask(FileDialog.LOAD) {}

    /** A folder: the system's dialog for files knows none but on a Mac, so Java's own asks. */
    fun whichFolder(): File? {
        val chooser = JFileChooser().apply { fileSelectionMode = JFileChooser.DIRECTORIES_ONLY }
        return chooser.takeIf { it.showOpenDialog(window()) == JFileChooser.APPROVE_OPTION }?.selectedFile
    }

    private fun ask(mode: Int, prepare: (FileDialog) -> Unit): File? {
        val dialog = FileDialog(window(), "", mode)
        prepare(dialog)
        dialog.isVisible = true
        val file = dialog.file ?: return null
        return File(dialog.directory, file)
    }
}
