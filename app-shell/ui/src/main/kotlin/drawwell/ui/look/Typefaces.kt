package drawwell.ui.look

import androidx.compose.ui.text.font.FontFamily

/** The bundled letters; each host loads a family in its own way from the files named here. */
data class Typefaces(val letters: FontFamily) {
    companion object {
        const val FOLDER = "drawwell/typefaces"
        const val REGULAR = "AtkinsonHyperlegibleNext_400Regular.ttf"
        const val MEDIUM = "AtkinsonHyperlegibleNext_500Medium.ttf"
        const val SEMIBOLD = "AtkinsonHyperlegibleNext_600SemiBold.ttf"
        const val BOLD = "AtkinsonHyperlegibleNext_700Bold.ttf"
    }
}
