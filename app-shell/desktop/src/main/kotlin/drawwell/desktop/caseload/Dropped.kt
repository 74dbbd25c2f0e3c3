package drawwell.desktop.caseload

import androidx.compose.foundation.ExperimentalFoundationApi
import androidx.compose.foundation.draganddrop.dragAndDropTarget
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.remember
import androidx.compose.runtime.rememberUpdatedState
import androidx.compose.ui.ExperimentalComposeUiApi
import androidx.compose.ui.Modifier
import androidx.compose.ui.draganddrop.DragAndDropEvent
import androidx.compose.ui.draganddrop.DragAndDropTarget
import androidx.compose.ui.draganddrop.awtTransferable
import java.awt.datatransfer.DataFlavor
import java.awt.datatransfer.Transferable
import java.io.File

/** Files that are dropped on the window. */
object Dropped {
    fun files(dropped: Transferable): List<File> {
        if (!dropped.isDataFlavorSupported(DataFlavor.javaFileListFlavor)) return emptyList()
        val files = dropped.getTransferData(DataFlavor.javaFileListFlavor) as? List<*>
        return files.orEmpty().filterIsInstance<File>().filter { it.isFile }
    }
}

@OptIn(ExperimentalFoundationApi::class, ExperimentalComposeUiApi::class)
@Composable
internal fun Modifier.takesFiles(take: (List<File>) -> Unit): Modifier {
    val takes by rememberUpdatedState(take)
    val target = remember {
        object : DragAndDropTarget {
            override fun onDrop(event: DragAndDropEvent): Boolean {
                val files = Dropped.files(event.awtTransferable)
                takes(files)
                return files.isNotEmpty()
            }
        }
    }
    return dragAndDropTarget({ true }, target)
}
