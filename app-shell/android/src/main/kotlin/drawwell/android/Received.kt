package drawwell.android

import android.content.Context
import android.content.Intent
import android.net.Uri
import drawwell.surface.longestFile
import java.io.File
import java.io.IOException
import java.io.InputStream
import java.io.OutputStream

/** Files on their way in. What another app says about them is not believed: the core looks for itself. */
internal class Received(private val context: Context) {
    /**
     * A copy that the core can read, no longer than the core takes in. Where none can be made there is no file, and the
     * core says so in its own words.
     */
    fun copy(from: Uri): File {
        empty()
        val to = folder().apply { mkdirs() }.resolve("record")
        // A library of another build says so when the record is opened.
        val most = runCatching { longestFile().toLong() }.getOrNull() ?: return to
        try {
            context.contentResolver.openInputStream(from)?.use { input -> to.outputStream().use { input.copyUpTo(most, it) } }
        } catch (unread: IOException) {
            to.delete()
        } catch (refused: SecurityException) {
            to.delete()
        }
        return to
    }

    /** Nothing that came in stays behind once the core has read it. */
    fun empty() {
        folder().deleteRecursively()
    }

    private fun folder() = context.cacheDir.resolve("received")

    /** One byte more than may be, so that the core sees that it is too long. */
    private fun InputStream.copyUpTo(most: Long, to: OutputStream) {
        val bytes = ByteArray(DEFAULT_BUFFER_SIZE)
        var left = most + 1
        while (left > 0) {
            val read = read(bytes, 0, minOf(left, bytes.size.toLong()).toInt())
            if (read < 0) return
            to.write(bytes, 0, read)
            left -= read
        }
    }

    companion object {
        private const val CARD = "drawwell"

        /** The consultant's card that a link holds, as it stands; whether it is one, the core says. */
        fun card(intent: Intent): String? =
            intent.dataString?.takeIf { intent.action == Intent.ACTION_VIEW && CARD.equals(intent.data?.scheme, ignoreCase = true) }

        /** The file that an intent brings, if it brings one. */
        fun from(intent: Intent): Uri? = when (intent.action) {
            Intent.ACTION_VIEW -> intent.data
            Intent.ACTION_SEND -> @Suppress("DEPRECATION") intent.getParcelableExtra(Intent.EXTRA_STREAM)
            else -> null
        }?.takeIf { it.scheme == "content" }
    }
}
