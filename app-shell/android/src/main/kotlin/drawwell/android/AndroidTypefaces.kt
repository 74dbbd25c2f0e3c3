package drawwell.android

import android.content.res.AssetManager
import androidx.compose.ui.text.font.Font
import androidx.compose.ui.text.font.FontFamily
import androidx.compose.ui.text.font.FontWeight
import drawwell.ui.look.Typefaces

/** The bundled letters, read from the package's assets. */
internal object AndroidTypefaces {
    fun load(assets: AssetManager) = Typefaces(
        FontFamily(
            letters(assets, Typefaces.REGULAR, FontWeight.Normal),
            letters(assets, Typefaces.MEDIUM, FontWeight.Medium),
            letters(assets, Typefaces.SEMIBOLD, FontWeight.SemiBold),
            letters(assets, Typefaces.BOLD, FontWeight.Bold),
        ),
    )

    private fun letters(assets: AssetManager, file: String, weight: FontWeight) =
        Font("${Typefaces.FOLDER}/$file", assets, weight)
}
