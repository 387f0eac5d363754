import type { Theme } from "vitepress";
import DefaultTheme from "vitepress/theme-without-fonts";
import "./colours.css";
import "./page.css";
import "./calculator.css";
import "./planner.css";
import "./print.css";

export default DefaultTheme satisfies Theme;
