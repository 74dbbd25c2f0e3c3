package drawwell.desktop

import androidx.compose.ui.text.font.FontFamily
import androidx.compose.ui.text.font.FontWeight
import androidx.compose.ui.text.platform.Font
import drawwell.ui.look.Typefaces

/** The bundled letters, read from the class path. */
object DesktopTypefaces {
    fun load() = Typefaces(
        FontFamily(
            letters(Typefaces.REGULAR, FontWeight.Normal),
            letters(Typefaces.MEDIUM, FontWeight.Medium),
            letters(Typefaces.SEMIBOLD, FontWeight.SemiBold),
            letters(Typefaces.BOLD, FontWeight.Bold),
        ),
    )

    private fun letters(file: String, weight: FontWeight) = Font(file, { bytes(file) }, weight)

    private fun bytes(file: String): ByteArray =
        checkNotNull(Typefaces::class.java.getResourceAsStream("/${Typefaces.FOLDER}/$file")) { "no letters in $file" }
            .use { it.readBytes() }
}
