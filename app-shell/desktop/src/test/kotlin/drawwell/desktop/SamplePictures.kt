package drawwell.desktop

import drawwell.desktop.pictures.Rendering
import drawwell.surface.Hand
import drawwell.surface.Palette
import drawwell.surface.Screen
import drawwell.ui.ScreenView
import drawwell.ui.samples.SampleFrame.frame
import drawwell.ui.samples.SampleSession
import java.io.File

fun main(arguments: Array<String>) {
    val folder = File(arguments[0])
    val typefaces = DesktopTypefaces.load()
    fun take(name: String, screen: Screen, scale: Float = 1f, scrolled: Boolean = false) =
        Rendering.write(File(folder, "$name.png"), scale, scrolled) { ScreenView(screen, typefaces, true) {} }
    for ((name, palette) in listOf("light" to Palette.LIGHT, "night" to Palette.NIGHT)) {
        take("ready.$name", SampleSession.ready(frame("Now", "Tuesday, 3:10", palette)))
        take("running.$name", SampleSession.running(frame("Running", "since 3:12", palette, undo = "Undo letdown"), true))
        take("fresh.$name", SampleSession.running(frame("Running", "", palette), false))
        take("amounts.$name", SampleSession.amounts(frame("Amounts", "", palette)))
    }
    take("ready.left", SampleSession.ready(frame("Now", "Tuesday, 3:10", hand = Hand.LEFT)))
    take("running.left", SampleSession.running(frame("Running", hand = Hand.LEFT, undo = "Undo letdown"), true))
    take("running.large", SampleSession.running(frame("Running", undo = "Undo letdown"), true), 2f)
    take("running.large-end", SampleSession.running(frame("Running", undo = "Undo letdown"), true), 2f, true)
    take("amounts.large", SampleSession.amounts(frame("Amounts")), 2f)
}
