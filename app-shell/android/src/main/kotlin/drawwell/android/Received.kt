package drawwell.android

import android.content.Context
import android.content.Intent
import android.net.Uri
import java.io.File
import java.io.IOException

/** Files on their way in. What another app says about them is not believed: the core looks for itself. */
internal class Received(private val context: Context) {
    /** A copy that the core can read. Where none can be made there is no file, and the core says so in its own words. */
    fun copy(from: Uri): File {
        val to = context.cacheDir.resolve("received").apply { mkdirs() }.resolve("record")
        to.delete()
        try {
            context.contentResolver.openInputStream(from)?.use { input -> to.outputStream().use { input.copyTo(it) } }
        } catch (unread: IOException) {
            to.delete()
        } catch (refused: SecurityException) {
            to.delete()
        }
        return to
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
