package drawwell.android

import android.content.ClipData
import android.content.Context
import android.content.Intent
import java.io.File
import java.util.UUID

/** Files on their way out. Only the last one is kept, for the app it was handed to. */
internal class HandingOver(private val context: Context) {
    private val folder = HandedOver.folder(context)

    fun empty() {
        folder.deleteRecursively()
    }

    fun place(fileName: String): File {
        empty()
        return folder.resolve(UUID.randomUUID().toString()).apply { mkdirs() }.resolve(File(fileName).name)
    }

    /** The system's share sheet, with leave to read this one file. */
    fun sharing(file: File, contentType: String): Intent {
        val uri = HandedOver.uri(context, file, contentType)
        val send = Intent(Intent.ACTION_SEND)
            .setType(contentType)
            .putExtra(Intent.EXTRA_STREAM, uri)
            .addFlags(Intent.FLAG_GRANT_READ_URI_PERMISSION)
        send.clipData = ClipData.newUri(context.contentResolver, file.name, uri)
        return Intent.createChooser(send, null)
    }
}
