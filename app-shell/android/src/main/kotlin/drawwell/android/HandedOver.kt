package drawwell.android

import android.content.ContentProvider
import android.content.ContentValues
import android.content.Context
import android.database.Cursor
import android.database.MatrixCursor
import android.net.Uri
import android.os.ParcelFileDescriptor
import android.provider.OpenableColumns
import java.io.File
import java.io.FileNotFoundException

/** Lets another app read a file that was handed to it, and nothing else. */
class HandedOver : ContentProvider() {
    override fun onCreate() = true

    override fun openFile(uri: Uri, mode: String): ParcelFileDescriptor {
        if (mode != "r") throw FileNotFoundException("$mode is not given")
        return ParcelFileDescriptor.open(file(uri), ParcelFileDescriptor.MODE_READ_ONLY)
    }

    override fun getType(uri: Uri): String? = uri.getQueryParameter(TYPE)

    override fun query(uri: Uri, wanted: Array<String>?, where: String?, with: Array<String>?, order: String?): Cursor {
        val file = file(uri)
        val known = mapOf(OpenableColumns.DISPLAY_NAME to file.name, OpenableColumns.SIZE to file.length())
        val columns = wanted?.filter { it in known }?.toTypedArray() ?: known.keys.toTypedArray()
        return MatrixCursor(columns, 1).apply { addRow(columns.map { known[it] }) }
    }

    override fun insert(uri: Uri, values: ContentValues?): Uri? = null

    override fun update(uri: Uri, values: ContentValues?, where: String?, with: Array<String>?) = 0

    override fun delete(uri: Uri, where: String?, with: Array<String>?) = 0

    /** Two steps below the folder, and nowhere else. */
    private fun file(uri: Uri): File {
        val folder = folder(checkNotNull(context)).canonicalFile
        val file = uri.pathSegments.fold(folder) { at, step -> at.resolve(step) }.canonicalFile
        if (file.parentFile?.parentFile != folder || !file.isFile) throw FileNotFoundException("no such file was handed over")
        return file
    }

    companion object {
        private const val TYPE = "type"

        internal fun folder(context: Context): File = context.cacheDir.resolve("handed-over")

        internal fun uri(context: Context, file: File, contentType: String): Uri = Uri.Builder()
            .scheme("content")
            .authority("${context.packageName}.handed-over")
            .appendPath(file.parentFile?.name)
            .appendPath(file.name)
            .appendQueryParameter(TYPE, contentType)
            .build()
    }
}
