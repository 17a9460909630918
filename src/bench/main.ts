import { functionOf, metadata } from "tackstitch:bindings";
import "./main.css";
import { startBench } from "./startBench";

void startBench({ functionOf, metadata });
