package drawwell.ui.look

import drawwell.surface.Appearance
import drawwell.surface.Hand
import drawwell.surface.Palette

/** A look in two words, in the one place where a host keeps it. What can't be read or written there is no trouble: it is only a look. */
class KeptLook(read: () -> String, private val write: (String) -> Unit) {
    @Volatile
    var look: Appearance? = runCatching { understood(read()) }.getOrNull()
        private set

    fun keep(look: Appearance) {
        this.look = look
        runCatching { write("${look.palette} ${look.hand}") }
    }

    private fun understood(words: String): Appearance {
        val (palette, hand) = words.trim().split(" ")
        return Appearance(Hand.valueOf(hand), Palette.valueOf(palette))
    }
}
